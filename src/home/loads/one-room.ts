import { figure } from '../../quantity/figure';
import { formula } from '../../quantity/figure-arithmetic';
import { practice, practiceRange } from '../../tables/practice-figures';
import { seasonsOf } from '../goal-seasons';
import { warmOtherwise } from '../heat/warm-otherwise';
import { type Load, type Season, seasons } from '../home';
import { AWAKE_HOURS, onlyWhileAwake } from './awake';
import type { LoadContext } from './context';
import { rankOf } from './load-keys';
import { makeLoad } from './make-load';

/** A heat pump of up to so many tons is a room unit already, and stays. Our judgement. */
const ROOM_TONS = practice('room-unit-tons');
const PLUG_HEATER_WATTS = practiceRange('plug-heater-watts');

/**
 * The loads of an outage where one warm or cool room is enough: what heats or cools the whole home stays off, and
 * one heater or room air conditioner stands in its place, unless a stove that needs no power or a room unit that is
 * there already does that, and only for the seasons the household asked for. What stays off is still in the list, for the bill and the panel know it.
 *
 * @param loads as the bills left them
 * @param named the same loads before any bill: what the bills changed, they change in one room too
 */
export function inOneRoom(context: LoadContext, loads: readonly Load[], named: readonly Load[]) {
  const { facts } = context;
  // Counted where it was asked; a question that was never put makes no room of a house.
  if (!facts.asked('one-room') || !facts.is('one-room', 'yes')) return [...loads];
  const goal = seasonsOf(facts);
  const big = loads.filter((load) => isWholeHome(context, load));
  const roomPump = loads.some((load) => load.id === 'heat-pump' && !big.includes(load));
  const heat = big.filter((load) => load.restsOn.includes('heat-main') && !roomPump);
  const cool = big.filter((load) => ['heat', 'both'].includes(load.follows));
  const splitHeats = facts.is('cool-main', 'mini-split');
  const room = [
    ...(heat.length > 0 && goal.includes('winter') && !splitHeats && !warmOtherwise(facts)
      ? [heater(context)]
      : []),
    ...(cool.length > 0 && goal.includes('summer') ? [cooler(context)] : []),
  ].map((load) => byBills(load, big, named));
  const kept = loads.map((load) => {
    if (big.includes(load)) return { ...load, rank: 'wait' as const, offInOutage: true };
    const warms = load.id === 'mini-split' && heat.length > 0;
    if (!warms) return load;
    return {
      ...load,
      rank: rankOf(facts, ['heat', 'cool']),
      restsOn: [...load.restsOn, 'heat-main', 'one-room'] as const,
    };
  });
  return [...kept, ...room];
}

function isWholeHome({ facts }: LoadContext, load: Load): boolean {
  if (['central-ac', 'heat-strips'].includes(load.id)) return true;
  if (load.id !== 'heat-pump') return false;
  return !(facts.told('heat-pump-tons') && (facts.number('heat-pump-tons') ?? 0) <= ROOM_TONS);
}

/**
 * One plug-in heater; by our own caution it plugs into a wall outlet and into nothing else, and is never on while
 * everybody sleeps.
 */
function heater(context: LoadContext): Load {
  const load = makeLoad('space-heater', {
    id: 'room-heater',
    called: { code: 'room-heater' },
    rank: rankOf(context.facts, ['heat']),
    follows: 'cold',
    climate: context.climate,
    runningWatts: figure({
      value: PLUG_HEATER_WATTS.likely,
      low: PLUG_HEATER_WATTS.low,
      unit: 'W',
      name: 'plug-heater-power',
      source: {
        kind: 'table',
        is: 'plug-heater',
        cite: [{ ref: 'DOE wattage list 750 to 1500 W' }],
      },
    }),
    shape: 'flat',
    wallOutletOnly: true,
    onlyInOutage: true,
    restsOn: ['heat-main', 'heat-second', 'one-room'],
  });
  return onlyWhileAwake(load);
}

/** A unit that is bought for this can be one that starts softly; an older one may ask for more than a power pack gives. */
function cooler(context: LoadContext): Load {
  return makeLoad('room-ac-inverter', {
    id: 'room-cooler',
    called: { code: 'room-cooler' },
    rank: rankOf(context.facts, ['cool']),
    follows: 'heat',
    climate: context.climate,
    onlyInOutage: true,
    restsOn: ['cool-main', 'one-room'],
  });
}

/** A home that needs more or less than usual does so in one room too, as far as the unit can in the hours it may run. */
function byBills(load: Load, big: readonly Load[], named: readonly Load[]): Load {
  const share = (season: Season) => {
    const sum = (of: readonly Load[]) =>
      of
        .filter((one) => big.some((other) => other.id === one.id))
        .reduce((kwh, one) => kwh + one.kwhPerDay[season].value, 0);
    const before = sum(named);
    return before > 0 ? sum(big) / before : 1;
  };
  const mostHours = load.awakeOnly ? AWAKE_HOURS : 24;
  const most = (mostHours * load.runningWatts.high) / 1000;
  const scaled = seasons.map((season) => {
    const [plain, by] = [load.kwhPerDay[season], share(season)];
    if (by === 1) return [season, plain] as const;
    const kwh = (at: number) => Math.min(most, at);
    const source = formula({ code: 'room-by-bills', factor: by }, [plain]);
    const value = kwh(plain.value * by);
    return [
      season,
      figure({
        ...plain,
        value,
        low: Math.min(value, kwh(plain.low * Math.min(1, by))),
        high: Math.max(value, kwh(plain.high * Math.max(1, by))),
        source,
      }),
    ] as const;
  });
  return { ...load, kwhPerDay: Object.fromEntries(scaled) as Load['kwhPerDay'] };
}
