import { type LossAYear, type OutageLoss, outageLosses } from '../../bill/lifecycle/outage-worth';
import type { Home } from '../../home/home';
import type { Outlook } from '../outlook';

/** Losses begin after so many hours: a closed refrigerator keeps food safe for about four (USDA). */
const afterHours: Readonly<Record<string, number>> = {
  food: 4,
  medicine: 4,
  hotel: 12,
  work: 2,
  pipes: 24,
  flood: 1,
};

/** What a year of expected outages costs a household without backup; empty when it put no dollars on a day. */
export function lossesOf({ facts }: Home, outlook: Outlook): LossAYear[] {
  const perDay = facts.told('loss-total') ? facts.number('loss-total') : null;
  const which = facts.list('outage-losses').filter((id) => id !== 'none');
  if (perDay === null || which.length === 0) return [];
  const sorts = [
    { times: outlook.ordinaryTimes.value, hours: outlook.ordinaryHours.value },
    { times: outlook.majorTimes.value, hours: outlook.majorHours.value },
  ]
    .filter(({ times, hours }) => times > 0 && hours > 0)
    .map(({ times, hours }) => ({ hours: hours / times, perYear: times }));
  // One amount was told for all of them, so each counts as an even share of it.
  const losses: OutageLoss[] = which.map((id) => ({
    name: id,
    dollars: perDay / which.length,
    afterHours: afterHours[id] ?? 4,
    each: 'day',
  }));
  return outageLosses(losses, sorts);
}
