import type { ChoiceId } from '#compiled/question-ids.js';
import { type Figure, figure } from '../../quantity/figure';
import {
  formula,
  operand,
  timesFigure,
  WATTS_IN_KW,
  worked,
} from '../../quantity/figure-arithmetic';
import type { HouseholdLoadId } from '../../tables/household-loads';
import { practiceRange } from '../../tables/practice-figures';
import type { Load } from '../home';
import { besidePump } from './beside-pump';
import { compressorStart, compressorWatts, tonsFromArea } from './compressor';
import { asFigure, type LoadContext } from './context';
import { rankOf } from './load-keys';
import type { LoadName } from './load-name';
import { type Better, makeLoad } from './make-load';

const fuelHeaters: Readonly<Partial<Record<ChoiceId<'heat-main'>, HouseholdLoadId>>> = {
  'gas-furnace': 'furnace-gas',
  'oil-furnace': 'furnace-oil',
  boiler: 'boiler',
  pellet: 'pellet-stove',
};

const heaterNames: Readonly<Partial<Record<HouseholdLoadId, LoadName>>> = {
  'furnace-gas': { code: 'furnace' },
  'furnace-oil': { code: 'oil-furnace' },
  boiler: { code: 'boiler' },
};

/** Whatever of the heating uses electricity. A wood stove and a gas heater without a plug use none. */
export function heating(context: LoadContext): Load[] {
  const kind = context.facts.choice('heat-main');
  if (kind === null) return [];
  const row = fuelHeaters[kind];
  if (row !== undefined) return [fuelHeater(context, row)];
  if (kind === 'heat-pump') {
    const backup = strips(context, 'backup-strips');
    return [heatPump(context), ...backup.map((load) => besidePump(context, load))];
  }
  if (kind === 'electric-furnace') return mainStrips(context, 'electric-furnace');
  if (kind === 'baseboard') return mainStrips(context, 'baseboard');
  return [];
}

/** A label gives the most it may draw; it usually runs at about three quarters of that. */
const OF_LABEL = practiceRange('heater-share-of-label');

function fuelHeater(context: LoadContext, row: HouseholdLoadId): Load {
  const label = asFigure(context, 'heat-watts', 'W', true);
  const runningWatts =
    label === null
      ? undefined
      : timesFigure(label, OF_LABEL, {
          name: 'heater-power',
          source: {
            kind: 'nameplate',
            is: 'heater-label',
            cite: ['common-practice-no-source'],
            from: [label],
          },
        });
  const rank = rankOf(context.facts, ['heat']);
  return makeLoad(row, {
    called: heaterNames[row],
    rank,
    runningWatts,
    follows: 'cold',
    climate: context.climate,
    wired: row !== 'pellet-stove',
    restsOn: ['heat-main', 'heat-watts'],
  });
}

function heatPump(context: LoadContext): Load {
  const tons = asFigure(context, 'heat-pump-tons', 'tons') ?? tonsFromArea(context);
  const watts = compressorWatts(context, 'heat-pump-run-amps');
  const cools = context.facts.is('cool-main', 'heat-pump');
  return makeLoad('heat-pump', {
    called: { code: 'heat-pump' },
    follows: cools ? 'both' : 'cold',
    heatsBy: 'pump',
    climate: context.climate,
    rank: rankOf(context.facts, cools ? ['heat', 'cool'] : ['heat']),
    count: tons,
    runningWatts: watts,
    startVa: compressorStart(context, {
      kind: 'heat-pump-kind',
      startAmps: 'heat-pump-start-amps',
      tons,
      watts,
    }),
    restsOn: ['heat-main', 'heat-pump-tons', 'heat-pump-run-amps', 'heat-pump-start-amps'],
  });
}

type StripName = 'backup-strips' | 'electric-furnace' | 'baseboard';

/** Resistance heat: one load, always off in an outage, for a bank is larger than most sources. */
function strips(context: LoadContext, code: StripName, given: Partial<Better> = {}): Load[] {
  const kw = asFigure(context, 'heat-strips', 'kW');
  if (kw === null || kw.high <= 0) return [];
  const banks = worked(
    { by: 'ratio', of: [kw], under: [operand(5, 'kW', 'bank-size')] },
    { unit: 'count', is: 'banks' },
  );
  const called: LoadName = { code };
  const load = makeLoad('heat-strips', {
    called,
    rank: 'wait',
    count: banks,
    runningWatts: timesFigure(kw, WATTS_IN_KW, {
      unit: 'W',
      name: { code: 'running-power', load: called },
      source: formula('element-kilowatts', [kw]),
    }),
    follows: 'cold',
    offInOutage: true,
    restsOn: ['heat-main', 'heat-strips'],
    ...given,
  });
  return [load];
}

function mainStrips(context: LoadContext, code: StripName): Load[] {
  const rank = rankOf(context.facts, ['heat']);
  const loads = strips(context, code, { rank, climate: context.climate });
  if (context.climate !== null) return loads;
  return loads.map((load) => ({
    ...load,
    kwhPerDay: { ...load.kwhPerDay, winter: mainHeatKwh(load.runningWatts) },
  }));
}

/** Main electric heat runs a third of a winter day at its full power; a tenth to six tenths. */
function mainHeatKwh(watts: Figure): Figure {
  const hours = practiceRange('main-electric-heat-hours');
  const { low, likely: value, high } = hours;
  const source = { kind: 'assumed', is: 'judgement' } as const;
  const aDay = figure({ low, value, high, unit: 'h', is: 'hours-of-running', source });
  return worked(
    { by: 'ratio', of: [watts, aDay], under: [WATTS_IN_KW] },
    {
      unit: 'kWh/day',
      name: 'electric-heat-energy',
      source: formula(
        { code: 'hours-of-day', hours: [low, value, high] },
        [watts],
        ['our-judgement'],
      ),
    },
  );
}
