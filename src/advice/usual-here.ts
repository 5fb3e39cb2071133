import type { Home } from '../home/home';
import type { Question } from '../interview/questions/question';

/** Where a place is known no closer than this, nothing of it narrows a range. */
const CLOSE = ['zip', 'prefix'];

/**
 * How far a home may lie above or below the stations that speak for it, ft, where these are alike and low: nine of ten do,
 * and higher up seven of ten. Source: each of the 1,020 published stations left out and held against those around it
 * (`test/advice/usual-here.test.ts`). It is also as close as the question asks for: a generator loses 1 % in 300 ft.
 */
export const NEAR_HEIGHT_FT = 300;
/** Stations above this say too little of a home between them, ft. */
export const HIGH_COUNTRY_FT = 3000;

/**
 * The question with the usual range that what is told leaves of it; null where it is settled. A home whose ZIP code is told
 * lies about as high as the weather stations that speak for it, within what these differ, outside of the high country.
 */
export function usualHere(question: Question, { site }: Home): Question | null {
  if (question.id !== 'home-elevation' || !CLOSE.includes(site.place.foundBy)) return question;
  const { low, high } = site.elevationFt;
  if (high > HIGH_COUNTRY_FT) return question;
  if (high - low <= 2 * NEAR_HEIGHT_FT) return null;
  const [least, most] = question.possible!;
  return { ...question, usual: [Math.max(least, low), Math.min(most, high)] };
}
