import { reference } from '../../quantity/cite';
import type { Figure, Source } from '../../quantity/figure';
import { operand, worked } from '../../quantity/figure-arithmetic';
import type { StepName } from '../../quantity/step-name';
import type { Climate } from '../../tables/place/climate';
import { practiceRange } from '../../tables/practice-figures';
import { BALANCE_C, heatNeed } from '../heat/heat-need';
import { pumpShare } from '../heat/heat-pump';
import { warmRoom } from '../heat/warm-room';
import type { Load, Season } from '../home';
import { monthMeans } from './usual-hours';

type End = 'low' | 'value' | 'high';
const ENDS: readonly End[] = ['low', 'value', 'high'];

type Hours = readonly [low: number, likely: number, high: number];

/** Hours of running a day that the climate asks of heating and cooling, by season. */
export interface ClimateHours {
  readonly heating: Readonly<Record<Season, Hours>>;
  readonly cooling: Readonly<Record<Season, Hours>>;
  /** Heating by a heat pump, as hours at its running power: it gives less for a kWh the colder it is. */
  readonly heatPump: Readonly<Record<Season, Hours>>;
  /** Hours of heating by hand, as long as nothing caps them; null where something does. */
  readonly heatingSteps: (season: Season, end: End) => Figure | null;
  /** An average day of the season over a hard one, for the bill: share of the hours. */
  readonly usualShare: {
    readonly heating: number;
    readonly cooling: number;
    readonly heatPump: number;
  };
  /** What cold food takes on a hard summer day, as a factor on a room kept at 21 C. */
  readonly warmRoom: ReturnType<typeof warmRoom>;
}

function hoursOf(id: 'heating-design-hours' | 'cooling-design-hours'): Hours {
  const { low, likely, high } = practiceRange(id);
  return [low, likely, high];
}

/**
 * Hours a day at full output at the design temperature (exceeded 99 % or 1 % of hours). A machine sized to that
 * load would run all day; usual oversizing of 1.4 leaves 17 h, twice the size 12 h.
 */
export const DESIGN_HOURS = {
  heating: hoursOf('heating-design-hours'),
  cooling: hoursOf('cooling-design-hours'),
};

/**
 * Worked out once for each climate. Running hours on a hard day of each season: the coldest month's mean less one standard deviation of the daily
 * mean in winter, the hottest month's plus one in summer, the mean of April and October as the mild day.
 *
 *   hours = design hours x (balance - T) / (balance - T_design)
 */
export function climateHours(climate: Climate): ClimateHours {
  const known = kept.get(climate);
  if (known !== undefined) return known;
  const made = hoursAsked(climate);
  kept.set(climate, made);
  return made;
}

const kept = new WeakMap<Climate, ClimateHours>();

function hoursAsked(climate: Climate): ClimateHours {
  const coldest = Math.min(...climate.meanC);
  const hottest = Math.max(...climate.meanC);
  const mild = (climate.meanC[3]! + climate.meanC[9]!) / 2;
  const { hardCold, hardHot } = hardDaysC(climate);
  const heat = (airC: number) => heatingHours(airC, climate.heat99C);
  const pumpAt = pumpShare(climate);
  const pump = (airC: number) => times(DESIGN_HOURS.heating, pumpAt(airC));
  const cool = (airC: number) => times(DESIGN_HOURS.cooling, heatShare(airC, climate.cool1C));
  const none: Hours = [0, 0, 0];
  return {
    heating: { winter: heat(hardCold), mild: heat(mild), summer: none },
    cooling: { winter: none, mild: cool(mild), summer: cool(hardHot) },
    heatPump: { winter: pump(hardCold), mild: pump(mild), summer: none },
    heatingSteps: (season, end) =>
      season === 'summer'
        ? null
        : heatingSteps(season === 'winter' ? hardCold : mild, climate.heat99C, end),
    warmRoom: warmRoom(hardHot),
    usualShare: {
      heating: ratio(coldShare(coldest, climate.heat99C), coldShare(hardCold, climate.heat99C)),
      cooling: ratio(heatShare(hottest, climate.cool1C), heatShare(hardHot, climate.cool1C)),
      heatPump: ratio(Math.max(...monthMeans(climate, pumpAt)), pumpAt(hardCold)),
    },
  };
}

const STATIONS = { kind: 'table', cite: reference('TMY3, NREL/TP-581-43156') } as const;

/** Design hours x (balance - T) / (balance - T_design), in °F. */
function heatingSteps(airC: number, designC: number, end: End): Figure | null {
  const at = ENDS.indexOf(end);
  const asked = DESIGN_HOURS.heating[at]!;
  const need = heatNeed(airC, designC);
  if (need <= 0 || asked * need !== heatingHours(airC, designC)[at]) return null;
  const inF = (celsius: number, is: StepName, source: Partial<Source>) =>
    operand(1.8 * celsius + 32, 'F', is, source);
  const balance = inF(BALANCE_C, 'balance', { kind: 'practice' });
  const below = (one: Figure, is: StepName) =>
    worked({ by: 'difference', of: [balance, one] }, { unit: 'F', is });
  const day = below(inF(airC, 'hard-day', STATIONS), 'degrees-of-day');
  const design = below(inF(designC, 'design-cold', STATIONS), 'degrees-of-design');
  if (design.value < 1.8 * 3) return null;
  const share = worked(
    { by: 'ratio', of: [day], under: [design] },
    { unit: 'count', is: 'heat-share' },
  );
  const hours = operand(asked, 'h', 'design-hours', { kind: 'practice' });
  return worked({ by: 'ratio', of: [hours, share], under: [] }, { unit: 'h' });
}

/** An average day of the season over a hard one, for what this load takes; 1 where it does not follow the weather. */
export function usualShareOf(load: Load, season: Season, climate: ClimateHours): number {
  if (['neither', 'room'].includes(load.follows) || season === 'mild') return 1;
  if (season === 'summer') return climate.usualShare.cooling;
  return load.heatsBy === 'pump' ? climate.usualShare.heatPump : climate.usualShare.heating;
}

/** Mean temperature of a hard winter day and of a hard summer day, C. */
export function hardDaysC(climate: Climate): { hardCold: number; hardHot: number } {
  return {
    hardCold: Math.min(...climate.meanC) - climate.winterSpreadK,
    hardHot: Math.max(...climate.meanC) + climate.summerSpreadK,
  };
}

function heatingHours(airC: number, designC: number): Hours {
  return times(DESIGN_HOURS.heating, coldShare(airC, designC));
}

/** Share of the design load at an outdoor temperature, 0 above the balance, no more than what runs all day. */
export function coldShare(airC: number, designC: number): number {
  return Math.min(24 / 17, heatNeed(airC, designC));
}

/** The same for cooling: 0 below the balance. */
export function heatShare(airC: number, designC: number): number {
  const span = Math.max(designC - BALANCE_C, 3);
  return Math.min(24 / 20, Math.max(0, (airC - BALANCE_C) / span));
}

function times(hours: Hours, share: number): Hours {
  const capped = hours.map((h) => Math.min(24, h * share));
  return [capped[0]!, capped[1]!, capped[2]!];
}

function ratio(a: number, b: number): number {
  return b > 0 ? a / b : 1;
}
