import type { QuestionId } from '#compiled/question-ids.js';
import { atEnd, type FigureEnd } from '../../quantity/at-end';
import type { Cite } from '../../quantity/cite';
import { type Figure, figure } from '../../quantity/figure';
import {
  formula,
  largerFigure,
  operand,
  timesFigure,
  WATTS_IN_KW,
  worked,
} from '../../quantity/figure-arithmetic';
import {
  dailyKwh,
  type HouseholdLoadId,
  householdLoad,
  type Triple,
} from '../../tables/household-loads';
import { loadShape } from '../../tables/load-shapes';
import type { Load, Rank, Season } from '../home';
import { seasons } from '../home';
import { figureOf, sourceOfRow } from '../sources';
import type { ClimateHours } from '../weather/climate-hours';
import type { LoadId } from './load-id';
import type { LoadName } from './load-name';

/** What this home knows better than the table row. */
export interface Better {
  readonly id?: LoadId;
  /** Left out: as its row. */
  readonly called?: LoadName;
  readonly rank: Rank;
  readonly life?: boolean;
  readonly volts?: 120 | 240;
  /** How many of it, or how many tons or banks. */
  readonly count?: Figure;
  readonly runningWatts?: Figure;
  readonly startVa?: Figure;
  readonly kwhPerDay?: Readonly<Record<Season, Figure>>;
  readonly shape?: string;
  readonly offInOutage?: boolean;
  readonly follows?: Load['follows'];
  readonly heatsBy?: Load['heatsBy'];
  /** With `follows`: the hours this climate asks for. */
  readonly climate?: ClimateHours | null;
  readonly wired?: boolean;
  readonly onlyInOutage?: true;
  readonly wallOutletOnly?: true;
  readonly restsOn: readonly QuestionId[];
}

/** A load from its row of the household-load table, with whatever this home knows better put in its place. */
export function makeLoad(rowId: HouseholdLoadId, better: Better): Load {
  const row = householdLoad(rowId);
  const called = better.called ?? { code: 'row', row: rowId };
  const source = sourceOfRow(row);
  const times = (f: Figure) => (better.count === undefined ? f : timesCount(f, better.count));
  const volts = better.volts ?? row.volts;
  const table = times(
    figureOf(row.runningWatts, 'W', { code: 'running-power', load: called }, source),
  );
  const runningWatts = better.runningWatts ?? table;
  const powerFactor = operand(row.powerFactor, 'count', 'power-factor', source);
  const runningVa = worked(
    { by: 'ratio', of: [runningWatts], under: [powerFactor] },
    { unit: 'VA', name: { code: 'apparent-power', load: called } },
  );
  const startVa = startOf(row.motor, better.startVa, () =>
    largerFigure(
      times(figureOf(row.startingVa, 'VA', { code: 'starting-demand', load: called }, source)),
      runningVa,
    ),
  );
  const perDay = (season: Season): Figure =>
    weatherEnergy(better, season, runningWatts) ??
    energyOf(dailyKwh(row, season), runningWatts, table, { called, source, times });
  return {
    id: better.id ?? rowId,
    called,
    rank: better.rank,
    life: better.life ?? false,
    volts,
    runningWatts,
    runningVa,
    startVa,
    startAmps:
      startVa === null
        ? null
        : timesFigure(startVa, 1 / volts, {
            unit: 'A',
            name: { code: 'starting-current', load: called },
          }),
    selfStarting: row.selfStarting,
    ...(row.ownBattery && { ownBattery: row.ownBattery }),
    ...(row.otherwise && { otherwise: row.otherwise }),
    kwhPerDay:
      better.kwhPerDay ??
      (Object.fromEntries(seasons.map((s) => [s, perDay(s)])) as Record<Season, Figure>),
    shape: loadShape(better.shape ?? row.shape),
    offInOutage: better.offInOutage ?? false,
    follows: better.follows ?? 'neither',
    ...(better.heatsBy && { heatsBy: better.heatsBy }),
    plugIn: volts === 120 && better.wired !== true && better.wallOutletOnly !== true,
    ...(better.onlyInOutage && { onlyInOutage: better.onlyInOutage }),
    ...(better.wallOutletOnly && { wallOutletOnly: better.wallOutletOnly }),
    restsOn: better.restsOn,
  };
}

function startOf(motor: boolean, told: Figure | undefined, table: () => Figure): Figure | null {
  if (told !== undefined) return told;
  return motor ? table() : null;
}

/** The row's daily energy, scaled by how this home's running power stands to the row's. */
function energyOf(
  kwh: Triple,
  running: Figure,
  table: Figure,
  as: { called: LoadName; source: Figure['source']; times: (f: Figure) => Figure },
): Figure {
  const plain = as.times(figureOf(kwh, 'kWh/day', { code: 'energy', load: as.called }, as.source));
  if (running === table) return plain;
  const likely = (plain.value * running.value) / table.value;
  const ends = [
    (plain.low * running.low) / table.low,
    (plain.high * running.high) / table.high,
    likely,
  ];
  const scaledAt = (end: FigureEnd) =>
    worked(
      { by: 'ratio', of: [atEnd(plain, end), atEnd(running, end)], under: [atEnd(table, end)] },
      { unit: plain.unit },
    );
  return figure({
    value: likely,
    low: Math.min(...ends),
    high: Math.max(...ends),
    unit: plain.unit,
    name: plain.name,
    source: plain.source,
    as: () => worked({ by: 'ratio', of: [plain, running], under: [table] }, { unit: plain.unit }),
    endAs: (end) => {
      const [a, b] = [scaledAt('low'), scaledAt('high')];
      return a.value < b.value === (end === 'low') ? a : b;
    },
  });
}

function timesCount(f: Figure, count: Figure): Figure {
  return timesFigure(f, count);
}

const BY_CLIMATE_CITE: Cite = [
  { of: 'hours-by-weather', ref: 'TMY3 temperatures (NREL/TP-581-43156)' },
  'usual-sizing',
  'common-practice',
];
const BY_PUMP_CITE: Cite = [
  ...BY_CLIMATE_CITE,
  { of: 'heat-pump-by-temperature', ref: 'NREL/TP-5500-56354' },
];

/** Running power x the hours a day that this climate asks for; undefined where the table's hours stand. */
function weatherEnergy(better: Better, season: Season, watts: Figure): Figure | undefined {
  const { climate, follows } = better;
  if (!climate || follows === undefined || follows === 'neither') return undefined;
  const heating = better.heatsBy === 'pump' ? climate.heatPump : climate.heating;
  const add = (i: 0 | 1 | 2) =>
    Math.min(
      24,
      (follows === 'heat' ? 0 : heating[season][i]) +
        (follows === 'cold' ? 0 : climate.cooling[season][i]),
    );
  const cite = better.heatsBy === 'pump' && season !== 'summer' ? BY_PUMP_CITE : BY_CLIMATE_CITE;
  const hours = figure({
    low: add(0),
    value: add(1),
    high: add(2),
    unit: 'h',
    is: 'hours-of-running',
    source: { kind: 'formula', cite, ends: 'usual-sizing' },
    ...(follows === 'cold' &&
      better.heatsBy !== 'pump' && {
        as: () => climate.heatingSteps(season, 'value') ?? operand(add(1), 'h', 'hours-of-running'),
        endAs: (end: FigureEnd) => climate.heatingSteps(season, end) ?? undefined,
      }),
  });
  return worked(
    { by: 'ratio', of: [watts, hours], under: [WATTS_IN_KW] },
    {
      unit: 'kWh/day',
      name: { code: 'hard-day', season },
      source: formula(
        { code: 'hours-by-climate', season, hours: [add(0), add(1), add(2)] },
        [watts],
        cite,
      ),
    },
  );
}
