import { type Figure, figure } from '../quantity/figure';
import { addFigures, formula, timesFigure } from '../quantity/figure-arithmetic';
import { formatRange } from '../quantity/format-quantity';
import type { ClimateHours } from './climate-hours';
import type { Facts } from './facts';
import type { BillCheck, Load, Season } from './home';

/** Days in the month of a bill, as far as a yearly mean goes: 365 / 12. */
const DAYS = 365 / 12;
/** The likely sum may be this much over the bill before we ask. */
const LIKELY_LIMIT = 1.15;

/**
 * Hold the loads against the bill of the same season, solar that was used at home added back.
 * Nothing is scaled: when they do not agree, both are shown and the household decides which is wrong.
 */
export function checkBill(facts: Facts, loads: readonly Load[], climate: ClimateHours): BillCheck {
  const kwh = facts.told('bill-kwh') ? facts.number('bill-kwh') : null;
  if (kwh === null) return no('no bill was given, so the loads could not be held against one');
  const solar = solarUsed(facts);
  if (solar === null) {
    return no(
      'there is solar and we do not know how much of it the home used, so the bill does not show the real use',
    );
  }
  const season = seasonOf(facts);
  const billKwhPerDay = figure({
    value: (kwh + solar) / DAYS,
    unit: 'kWh/day',
    name: 'use on the bill',
    source: {
      kind: 'told',
      label: `${kwh} kWh on the bill${solar > 0 ? ` + ${solar} kWh of own solar` : ''}, over ${DAYS.toFixed(1)} days`,
    },
  });
  const loadsKwhPerDay = addFigures(
    loads.map((load) => usualDay(load, season, climate)),
    {
      unit: 'kWh/day',
      name: `all the loads named, on an average ${season} day`,
      source: formula(
        'the sum of all loads named, heating and cooling at an average day of the season',
      ),
    },
  );
  return { ...judge(billKwhPerDay, loadsKwhPerDay), billKwhPerDay, loadsKwhPerDay, season };
}

function judge(bill: Figure, loads: Figure) {
  const both = `The loads come to ${formatRange(loads.low, loads.value, loads.high, 'kWh')} a day, the bill to ${bill.value.toFixed(1)} kWh a day.`;
  if (loads.low > bill.value) {
    return {
      verdict: 'loads-over-bill' as const,
      says: `${both} Even the low end is over the bill. One of them is wrong: the hours, the watts, or the month of the bill. Check those before you buy.`,
    };
  }
  if (loads.value > LIKELY_LIMIT * bill.value) {
    return {
      verdict: 'loads-likely-high' as const,
      says: `${both} That is more than 1.15 times the bill. Check the hours and the watts of the largest loads, and the month of the bill.`,
    };
  }
  const says =
    bill.value > loads.high
      ? `${both} The bill is above even the high end: something was not named, or runs longer than we count. What must run does not hang on it.`
      : `${both} They fit together.`;
  return { verdict: 'fits' as const, says };
}

/** Heating and cooling of an average day: the hard day of the plan times the climate's share. */
function usualDay(load: Load, season: Season, climate: ClimateHours): Figure {
  const day = load.kwhPerDay[season];
  if (['neither', 'room'].includes(load.follows) || season === 'mild') return day;
  const share = season === 'winter' ? climate.usualShare.heating : climate.usualShare.cooling;
  return timesFigure(day, share);
}

function solarUsed(facts: Facts): number | null {
  if (facts.value('own-sources') === null) return null;
  if (!facts.has('own-sources', 'solar')) return 0;
  return facts.told('bill-solar-kwh') ? facts.number('bill-solar-kwh') : null;
}

function seasonOf(facts: Facts): Season {
  const season = facts.value('bill-season');
  return season === 'winter' || season === 'summer' ? season : 'mild';
}

function no(because: string): BillCheck {
  return { verdict: 'not-possible', because };
}
