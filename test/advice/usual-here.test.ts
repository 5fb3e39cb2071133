import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { likelyAnswers } from '../../src/advice/likely-answers';
import { HIGH_COUNTRY_FT, NEAR_HEIGHT_FT, usualHere } from '../../src/advice/usual-here';
import { Facts } from '../../src/home/facts';
import { siteOf } from '../../src/home/site';
import type { Answers } from '../../src/interview/answers';
import { resolve } from '../../src/interview/questions/resolve';
import { allStations } from '../../src/tables/place/climate';
import { FAR_KM, nearStations } from '../../src/tables/place/near-stations';

const FT_PER_M = 1 / 0.3048;
const elevation = interview.questions.find(({ id }) => id === 'home-elevation')!;

test('a home whose ZIP code is told lies as high as the stations around it: that is settled', () => {
  expect(usualHere(elevation, homeAt({ 'home-zip': '48911' }))).toBeNull();
});

test('where the stations differ in height, within what they differ', () => {
  const hills = tried({ 'home-zip': '26241' });
  const { low, high } = homeAt({ 'home-zip': '26241' }).site.elevationFt;
  expect(high - low).toBeGreaterThan(2 * NEAR_HEIGHT_FT);
  expect([Math.min(...hills), Math.max(...hills)]).toEqual([low, high]);
});

test('in the high country, and without a ZIP code, in the whole range', () => {
  const [low, high] = elevation.usual!;
  const wide: Answers[] = [{}, { 'home-zip': 'not sure' }, { 'home-zip': '80435' }];
  for (const answers of wide) {
    expect(Math.min(...tried(answers))).toBe(low);
    expect(Math.max(...tried(answers))).toBe(high);
  }
});

test('nothing told changes what another question is tried with', () => {
  const other = interview.questions.find(({ id }) => id === 'fridge-count')!;
  expect(usualHere(other, homeAt({ 'home-zip': '48911' }))).toBe(other);
});

// Outside check: heights of the 1,020 stations of TMY3 (NREL/TP-581-43156), each left out in its turn.
test('nine of ten places lie as high as their stations, within what these differ; in the high country they do not', () => {
  // Every third is enough, and quick.
  const some = allStations().filter((_, i) => i % 3 === 0);
  const places = some.flatMap((station) => {
    const others = allStations().filter((one) => one !== station);
    const near = nearStations({ ...station, elevationM: null }, others);
    const closest = Math.min(...near.map(({ distanceKm }) => distanceKm));
    if (closest > FAR_KM) return [];
    const heights = near.map((one) => one.station.elevationM);
    const middle = near.reduce((sum, one) => sum + one.share * one.station.elevationM, 0);
    const differ = (Math.max(...heights) - Math.min(...heights)) * FT_PER_M;
    const off = Math.abs(station.elevationM - middle) * FT_PER_M;
    const high = middle * FT_PER_M + differ > HIGH_COUNTRY_FT;
    return [{ high, inside: off <= Math.max(differ, NEAR_HEIGHT_FT) }];
  });
  const share = (high: boolean) => {
    const such = places.filter((one) => one.high === high);
    return such.filter(({ inside }) => inside).length / such.length;
  };
  expect(places.length).toBeGreaterThan(250);
  expect(share(false)).toBeGreaterThan(0.9);
  expect(share(true)).toBeLessThan(0.85);
});

function homeAt(answers: Answers) {
  const known = resolve(interview.questions, answers, 'assume');
  return { site: siteOf(new Facts(known)) } as Parameters<typeof usualHere>[1];
}

function tried(answers: Answers): number[] {
  const known = resolve(interview.questions, answers, 'assume');
  return likelyAnswers(usualHere(elevation, homeAt(answers))!, known).map(({ answer }) =>
    Number(answer),
  );
}
