import { apparentPowerVa } from '../../physics/apparent-power';
import { START_MULTIPLES, startFromMultiple } from '../../physics/motor-start';
import { atEnd } from '../../quantity/at-end';
import { type Figure, figure } from '../../quantity/figure';
import {
  formula,
  HOURS_IN_DAY,
  MINUTES_IN_HOUR,
  operand,
  timesFigure,
  WATTS_IN_KW,
  worked,
} from '../../quantity/figure-arithmetic';
import { type HouseholdLoadId, householdLoad, householdLoads } from '../../tables/household-loads';
import { practiceRange } from '../../tables/practice-figures';
import type { Load, Season } from '../home';
import { sourceOfRow } from '../sources';
import { asFigure, type LoadContext } from './context';
import { rankOf } from './load-keys';
import { makeLoad } from './make-load';
import { wellStart } from './well-start';

/** Well, waste and sump pumps. */
export function pumps(context: LoadContext): Load[] {
  return [...well(context), ...waste(context), ...sump(context)];
}

/** The id of the table row of a kind of pump whose horsepower is at or just above `hp`. */
function rowByHp(prefix: string, hp: number): HouseholdLoadId {
  const rows = householdLoads.rows
    .filter((row) => row.id.startsWith(`${prefix}-`) && row.hp !== undefined)
    .sort((a, b) => a.hp! - b.hp!);
  return (rows.find((row) => row.hp! >= hp - 0.02) ?? rows.at(-1)!).id;
}

function well(context: LoadContext): Load[] {
  const { facts } = context;
  if (!facts.is('water-source', 'well', 'shallow-pump')) return [];
  const volts = facts.is('well-volts', 'v120') ? 120 : 240;
  // The question file says what a pump of unknown strength counts as; before it is asked it counts as 1 hp.
  const hp = asFigure(context, 'well-hp', 'hp')?.value ?? householdLoad('well-pump-1hp').hp!;
  const known = facts.told('well-hp');
  const row =
    volts === 120 && hp <= 0.55 ? 'jet-pump' : known ? rowByHp('well-pump', hp) : 'well-pump';
  const amps = asFigure(context, 'well-run-amps', 'A', true);
  const runningWatts = amps === null ? undefined : wattsFromAmps(amps, volts, row);
  const minutes = asFigure(context, 'well-minutes', 'min');
  const watts = runningWatts ?? wattsOf(row);
  return [
    makeLoad(row, {
      id: 'well',
      called: { code: 'well-pump' },
      rank: rankOf(facts, ['well']),
      volts,
      wired: true,
      runningWatts,
      startVa: wellStart(context, {
        volts,
        hp,
        runningAmps: amps?.value ?? usualAmps(watts, volts, row),
        row,
      }),
      kwhPerDay: minutes === null ? undefined : everyDay(watts, minutes),
      restsOn: [
        'water-source',
        'well-hp',
        'well-volts',
        'well-run-amps',
        'well-start-amps',
        'well-start-kind',
      ],
    }),
  ];
}

/** Amps of a pump from its power: apparent power over volts. */
function usualAmps({ value: watts }: Figure, volts: number, row: HouseholdLoadId): number {
  return apparentPowerVa({ watts, powerFactor: householdLoad(row).powerFactor }) / volts;
}

function waste(context: LoadContext): Load[] {
  const { facts } = context;
  if (!facts.is('waste', 'septic-pump', 'grinder')) return [];
  const row = facts.is('waste', 'grinder') ? 'grinder-pump' : 'septic-pump';
  const hp = asFigure(context, 'waste-hp', 'hp');
  const base = householdLoad(row);
  const size = operand(base.hp!, 'hp', 'row-size', sourceOfRow(base));
  const by =
    hp === null
      ? undefined
      : worked({ by: 'ratio', of: [hp], under: [size] }, { unit: 'count', is: 'times-of-row' });
  return [
    makeLoad(row, {
      id: 'waste',
      called: { code: row === 'grinder-pump' ? 'grinder-pump' : 'septic-pump' },
      rank: rankOf(facts, ['waste']),
      count: by,
      wired: true,
      restsOn: ['waste', 'waste-hp'],
    }),
  ];
}

function sump(context: LoadContext): Load[] {
  const { facts } = context;
  if (!facts.is('sump', 'one', 'one-with-battery')) return [];
  const row = facts.told('sump-hp') ? rowByHp('sump', facts.number('sump-hp')!) : 'sump';
  const amps = asFigure(context, 'sump-amps', 'A', true);
  const runningWatts =
    amps === null
      ? undefined
      : timesFigure(amps, practiceRange('pump-watts-per-amp-115v'), {
          unit: 'W',
          name: 'sump-power',
          source: {
            kind: 'nameplate',
            is: 'sump-amps-read',
            from: [amps],
          },
        });
  const startVa = amps === null ? undefined : startOfSump(amps);
  const minutes = asFigure(context, 'sump-minutes', 'min');
  return [
    makeLoad(row, {
      id: 'sump',
      called: { code: 'sump-pump' },
      rank: rankOf(facts, ['sump']),
      runningWatts,
      startVa,
      kwhPerDay: minutes === null ? undefined : stormDay(runningWatts ?? wattsOf(row), minutes),
      shape: 'flat',
      restsOn: ['sump', 'sump-hp', 'sump-amps', 'sump-minutes'],
    }),
  ];
}

function startOfSump(amps: Figure): Figure {
  const { va } = startFromMultiple({
    runningAmps: amps.value,
    multiple: START_MULTIPLES,
    volts: 115,
  });
  return figure({
    value: va.likely,
    low: va.low,
    high: va.high,
    unit: 'VA',
    name: 'sump-start',
    source: formula('start-multiple', [amps], ['common-practice-no-source']),
  });
}

function wattsOf(row: HouseholdLoadId): Figure {
  const [low, value, high] = householdLoad(row).runningWatts;
  const source = {
    kind: 'table',
    is: 'usual-of-size',
    cite: householdLoad(row).source,
  } as const;
  return figure({ low, value, high, unit: 'W', source });
}

function wattsFromAmps(amps: Figure, volts: number, row: HouseholdLoadId): Figure {
  const powerFactor = householdLoad(row).powerFactor;
  const supply = operand(volts, 'V', 'supply-volts');
  const factor = operand(powerFactor, 'count', 'power-factor', sourceOfRow(householdLoad(row)));
  return worked(
    { by: 'ratio', of: [amps, supply, factor], under: [] },
    {
      unit: 'W',
      name: 'well-power',
      source: {
        kind: 'nameplate',
        is: { code: 'pump-amps-read', volts, powerFactor },
        from: [amps],
      },
    },
  );
}

/** W x min / 60,000, the same in every season. */
function everyDay(watts: Figure, minutes: Figure): Record<Season, Figure> {
  const day = worked(
    { by: 'ratio', of: [watts, minutes], under: [MINUTES_IN_HOUR, WATTS_IN_KW] },
    {
      unit: 'kWh/day',
      name: 'pump-energy',
      source: formula('minutes-a-day', [watts, minutes]),
    },
  );
  return { winter: day, summer: day, mild: day };
}

/** Of the worst hour told, the share that a whole day is sure to bring; our judgement. */
const LEAST_STORM_SHARE = 0.25;

/** A day as wet as the worst hour told; a quarter of it at the low end. */
function stormDay(watts: Figure, minutesAnHour: Figure): Record<Season, Figure> {
  const kwh = (w: number, min: number, share: number) => (w * (min / 60) * 24 * share) / 1000;
  const steps = (...of: readonly Figure[]) =>
    worked(
      { by: 'ratio', of: [...of, HOURS_IN_DAY], under: [MINUTES_IN_HOUR, WATTS_IN_KW] },
      { unit: 'kWh/day' },
    );
  const quarter = operand(LEAST_STORM_SHARE, 'count', 'least-storm-share');
  const day = figure({
    value: kwh(watts.value, minutesAnHour.value, 1),
    low: kwh(watts.low, minutesAnHour.low, LEAST_STORM_SHARE),
    high: kwh(watts.high, minutesAnHour.high, 1),
    unit: 'kWh/day',
    name: 'sump-storm-day',
    as: () => steps(watts, minutesAnHour),
    endAs: (end) =>
      steps(atEnd(watts, end), atEnd(minutesAnHour, end), ...(end === 'low' ? [quarter] : [])),
    source: formula('storm-hour', [watts, minutesAnHour]),
  });
  return { winter: day, summer: day, mild: day };
}
