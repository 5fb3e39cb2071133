import type { Home, Load } from '../../home/home';
import { peakOf } from '../../home/loads/demand';
import { PACK_IDLE_WATTS, packIdleWatts } from '../../home/loads/pack-idle';
import { netKwhByHour, runtimeOn } from '../../outage/runtime';
import { splitRoundTrip } from '../../physics/round-trip';
import { HOURS_PER_YEAR } from '../../physics/weather/calendar';
import { type Figure, figure } from '../../quantity/figure';
import { formula } from '../../quantity/figure-arithmetic';
import { onceMade } from '../../quantity/once-made';
import { batteryType } from '../../tables/battery-types';
import { packSteps } from '../../tables/generic-steps';
import { withinBudgetUsd } from '../budget';
import { owned, part } from '../costs';
import { countedHours } from '../make-route';
import { ownPack } from '../own-battery';
import type { Part } from '../route';

const lfp = batteryType('lithium-iron-phosphate');

export interface PackSize {
  /** With the pack that is there, kWh. */
  readonly nameplateKwh: number;
  /** Of that, still to be bought. */
  readonly boughtKwh: number;
  readonly usableKwh: number;
  readonly watts: number;
  readonly startVa: number;
  readonly hours: Figure;
}

/**
 * A pack that runs and starts these loads, the household's own first, alone or beside a new one (up to two of the
 * largest): the smallest that lasts the hours at a likely price within
 * the budget; where none does, the largest within it; where none is, the smallest. Null: none runs them.
 */
export function choosePack(home: Home, loads: readonly Load[], goalHours: number): PackSize | null {
  const sized = packSizes(home, loads);
  const price = (kwh: number) => (kwh === 0 ? 0 : part('power-pack', kwh).costUsd.value);
  const payable = sized.filter((s) => withinBudgetUsd(home, price(s.boughtKwh)));
  return (
    payable.find((s) => countedHours(home, s.hours) >= goalHours) ??
    payable.at(-1) ??
    sized[0] ??
    null
  );
}

/** Every pack that runs and starts these loads, smallest first: their own alone, or beside one of each size. */
export function packSizes(home: Home, loads: readonly Load[]): PackSize[] {
  const demand = peakOf(loads, home.goalSeasons);
  const single = packSteps();
  const largest = single.at(-1)!;
  const own = ownPack(home);
  const alone = own === null ? [] : [{ kwh: 0, watts: own.watts, startVa: own.startVa }];
  const steps = [...alone, ...single, { ...largest, kwh: 2 * largest.kwh }];
  const hoursOf = packHoursBySize(home, loads);
  const able = steps.filter(
    (s) => demand.runningWatts.value <= s.watts && demand.startVa.high <= s.startVa,
  );
  return able.map(({ kwh: boughtKwh, watts, startVa }) => {
    const usableKwh = boughtKwh * lfp.usableDepth + (own?.usableKwh ?? 0);
    const nameplateKwh = boughtKwh + (own?.nameplateKwh ?? 0);
    const hours = onceMade(() => hoursOf(usableKwh));
    const size = { nameplateKwh, boughtKwh, usableKwh, watts, startVa };
    return {
      ...size,
      get hours() {
        return hours();
      },
    };
  });
}

/**
 * Hours a pack runs these loads on a hard day of the goal's season: from the hungriest to the thriftiest use. Between
 * uses it is switched off, but in the hungriest, where it is left on day and night and
 * the outage starts at an hour of which one in ten is harder.
 */
export function packHours(home: Home, loads: readonly Load[], usableKwh: number): Figure {
  return packHoursBySize(home, loads)(usableKwh);
}

/** The same at many sizes, what a day takes out of the pack worked out once. */
function packHoursBySize(home: Home, loads: readonly Load[]): (usableKwh: number) => Figure {
  const { dischargeEfficiency } = splitRoundTrip(lfp.roundTrip);
  const days = (pick: End) =>
    onceMade(() =>
      home.goalSeasons.map((season) =>
        netKwhByHour({
          loadWattsByHour: Array.from({ length: 24 }, (_, h) =>
            loads.reduce((sum, l) => sum + l.kwhPerDay[season][pick] * l.shape[h]! * 1000, 0),
          ),
          inverterIdleWatts: leftOn(home, pick) ? PACK_IDLE_WATTS : packIdleWatts(loads, season),
          dischargeEfficiency,
        }),
      ),
    );
  const byPick = { low: days('low'), value: days('value'), high: days('high') };
  return (usableKwh) => hoursOnDays(usableKwh, (pick) => byPick[pick]());
}

/** End of a figure. */
type End = 'low' | 'value' | 'high';

/** @param daysAt net energy of a hard day by the hour, one for each season of the goal */
function hoursOnDays(usableKwh: number, daysAt: (pick: End) => readonly Float64Array[]): Figure {
  const hours = (pick: End) =>
    Math.min(
      ...daysAt(pick).map((net) => {
        const { hardHours, typicalHours } = runtimeOn(net, usableKwh);
        return (pick === 'high' ? hardHours : typicalHours) ?? HOURS_PER_YEAR;
      }),
    );
  return figure({
    value: hours('value'),
    low: hours('high'),
    high: hours('low'),
    unit: 'h',
    is: 'pack-hours',
    source: {
      ...formula('hard-day-use'),
      ends: 'use-of-a-day',
    },
  });
}

/** The careful count leaves a pack on day and night, unless switching it off is part of how the household lives. */
function leftOn({ way }: Home, pick: End): boolean {
  return pick === 'high' && way === 'usual';
}

/** What is there and what is bought of a pack, of the class a pack of its size belongs to. */
export function packParts(
  { nameplateKwh, boughtKwh }: PackSize,
  buy: (kwh: number) => Part = (kwh) => part('power-pack', kwh, { code: 'pack', kwh }),
): Part[] {
  const ownKwh = nameplateKwh - boughtKwh;
  const have = owned({ code: 'own-pack', kwh: ownKwh }, 'power-pack', ownKwh);
  return [...(ownKwh > 0 ? [have] : []), ...(boughtKwh > 0 ? [buy(boughtKwh)] : [])];
}
