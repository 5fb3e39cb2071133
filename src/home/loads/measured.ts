import type { QuestionId } from '#compiled/question-ids.js';
import { type Figure, figure, WorkedOut } from '../../quantity/figure';
import { largerFigure, operand, timesFigure, worked } from '../../quantity/figure-arithmetic';
import type { FigureName } from '../../quantity/figure-name';
import { type PracticeId, practiceRange } from '../../tables/practice-figures';
import type { Facts } from '../facts';
import type { Load, Season } from '../home';
import { seasons } from '../home';
import { type ReadOf, readOf } from './measured-things';
import { neverLessened } from './never-lessened';

/**
 * The loads with what the household measured in place of labels and tables: running power, start, energy of a day. Those
 * of a home that measured nothing are the same objects.
 */
export function withMeasured(facts: Facts, loads: readonly Load[]): Load[] {
  return loads.map((load) => {
    const of = facts.told('measured') ? readOf(load.id) : undefined;
    return of === undefined ? load : measuredLoad(facts, load, of);
  });
}

function measuredLoad(facts: Facts, load: Load, of: ReadOf): Load {
  const read = (id: QuestionId | undefined, as: ReadAs) =>
    id !== undefined && facts.told(id) ? reading(facts, id, as) : null;
  const watts = read(of.watts, {
    unit: 'W',
    within: 'meter-reading',
    name: { code: 'running-power', load: load.called },
  });
  const start =
    load.startVa === null
      ? null
      : read(of.start, {
          unit: 'VA',
          within: 'start-reading',
          name: { code: 'starting-demand', load: load.called },
        });
  const day = read(of.day, {
    unit: 'kWh/day',
    within: 'day-reading',
    name: { code: 'energy', load: load.called },
  });
  if (watts === null && start === null && day === null) return load;
  const careful = neverLessened(load);
  const taken = (measured: Figure | null, counted: Figure) =>
    measured === null ? counted : careful ? notBelow(measured, counted) : measured;
  const runningWatts = taken(watts, load.runningWatts);
  const runningVa =
    runningWatts === load.runningWatts ? load.runningVa : apparent(load, runningWatts);
  const startVa = load.startVa && largerFigure(taken(start, load.startVa), runningVa);
  return {
    ...load,
    runningWatts,
    runningVa,
    startVa,
    startAmps:
      startVa &&
      timesFigure(startVa, 1 / load.volts, {
        unit: 'A',
        name: { code: 'starting-current', load: load.called },
      }),
    kwhPerDay: day === null ? byWatts(load, runningWatts) : byDay(load, day),
    restsOn: [...load.restsOn, ...[of.watts, of.start, of.day].filter(isTold(facts))],
  };
}

const isTold =
  (facts: Facts) =>
  (id: QuestionId | undefined): id is QuestionId =>
    id !== undefined && facts.told(id);

interface ReadAs {
  readonly unit: string;
  /** How wide a reading of its kind is. */
  readonly within: PracticeId;
  readonly name: FigureName;
}

/** What was read, as wide as such a meter and such days are. */
function reading(facts: Facts, id: QuestionId, { unit, within, name }: ReadAs): Figure {
  const { low, likely, high } = practiceRange(within);
  const value = facts.number(id)! * likely;
  return figure({
    value,
    low: value * low,
    high: value * high,
    unit,
    name,
    source: { kind: 'told', is: 'measured', question: id },
  });
}

/** What somebody's health or a dry house hangs on is never counted lower for being measured once, and says so. */
function notBelow(measured: Figure, counted: Figure): Figure {
  if (measured.value >= counted.value) {
    return figure({ ...measured, high: Math.max(measured.high, counted.high) });
  }
  const { value: read, unit } = measured;
  const is = { code: 'measured-less', counted: counted.source.is, read, unit } as const;
  const kept = { ...counted, source: { ...counted.source, is } };
  return new WorkedOut(kept, () => counted.made);
}

/** The same power factor as before. */
function apparent(load: Load, watts: Figure): Figure {
  const factor = load.runningWatts.value / load.runningVa.value;
  return worked(
    { by: 'ratio', of: [watts], under: [operand(factor, 'count', 'power-factor')] },
    { unit: 'VA', name: { code: 'apparent-power', load: load.called } },
  );
}

/** Energy goes with the power: as many hours as before. */
function byWatts(load: Load, watts: Figure): Load['kwhPerDay'] {
  const before = load.runningWatts;
  if (watts === before || watts.value === before.value) return load.kwhPerDay;
  return each((season) =>
    worked(
      {
        by: 'ratio',
        of: [load.kwhPerDay[season], watts],
        under: [operand(before.value, 'W', 'counted-before')],
      },
      { unit: 'kWh/day', name: load.kwhPerDay[season].name },
    ),
  );
}

/** The day measured is one of mild weather; the other seasons stand to it as they did. */
function byDay({ kwhPerDay }: Load, day: Figure): Load['kwhPerDay'] {
  const { mild } = kwhPerDay;
  return each((season) => {
    const before = kwhPerDay[season];
    if (before.value === mild.value || mild.value === 0) return day;
    const counted = (of: Figure) => operand(of.value, 'kWh/day', 'counted-before');
    return worked(
      { by: 'ratio', of: [day, counted(before)], under: [counted(mild)] },
      { unit: 'kWh/day', name: before.name },
    );
  });
}

const each = (of: (season: Season) => Figure): Record<Season, Figure> =>
  Object.fromEntries(seasons.map((season) => [season, of(season)])) as Record<Season, Figure>;
