import type { QuestionId } from '#compiled/question-ids.js';
import type { Home } from '../home/home';
import { chanceOfLongOutage, outageOutlook, yearlyOutages } from '../outage/expected-outages';
import { reference } from '../quantity/cite';
import { type Figure, figure } from '../quantity/figure';
import { type OutageRecord, outageRecord } from '../tables/outage-statistics';

/** What outages to expect here, ordinary and major apart; weak evidence, with wide ranges. */
export interface Outlook {
  readonly ordinaryTimes: Figure;
  readonly ordinaryHours: Figure;
  readonly majorTimes: Figure;
  readonly majorHours: Figure;
  /** Chance of at least one outage of the goal's length within ten years, %. */
  readonly chanceOfGoal: Figure;
  readonly fromState: boolean;
  /** Whose record of which years went in: the source of the figures. */
  readonly record: OutageRecord;
}

/** Published rates of the state, moved by what the household has lived through. */
export function outlookOf(home: Home): Outlook {
  const told = (id: QuestionId) =>
    home.facts.told(id) ? (home.facts.number(id) ?? undefined) : undefined;
  const outlook = outageOutlook(home.site.state, {
    timesPerYear: told('outage-often'),
    longestHours: told('outage-longest'),
  });
  const { ordinary, major } = yearlyOutages(outlook);
  const chance = chanceOfLongOutage(outlook, { hours: home.goalHours.value });
  const record = outageRecord(home.site.state);
  const source = {
    kind: 'table',
    is: { code: 'outage-record', record },
    cite: reference('EIA Electric Power Annual, chapter 11, form EIA-861'),
  } as const;
  const make = (
    given: { low: number; value: number; high: number },
    as: Pick<Figure, 'unit' | 'is'>,
  ) => figure({ ...given, ...as, source });
  return {
    ordinaryTimes: make(ordinary.times, { unit: 'per year', is: 'ordinary-outages' }),
    ordinaryHours: make(ordinary.hours, { unit: 'h', is: 'ordinary-hours' }),
    majorTimes: make(major.times, { unit: 'per year', is: 'major-outages' }),
    majorHours: make(major.hours, { unit: 'h', is: 'major-hours' }),
    chanceOfGoal: make(
      { low: chance.low * 100, value: chance.value * 100, high: chance.high * 100 },
      { unit: '%', is: 'chance-in-ten-years' },
    ),
    fromState: outlook.fromState,
    record,
  };
}
