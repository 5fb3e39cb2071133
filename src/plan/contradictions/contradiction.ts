import type { ChoiceId, QuestionId } from '#compiled/question-ids.js';
import type { BillMismatch } from '../../bill/tariff/match-bill';
import type { Tariff } from '../../bill/tariff/tariff';
import type { Home } from '../../home/home';
import type { LoadName } from '../../home/loads/load-name';
import type { Answers } from '../../interview/answers';

/** Whose voltage, amps or start were told, where they do not fit. */
export type Motor = 'water-pump' | 'heat-pump' | 'air-conditioner';

export const healthDevices = ['oxygen', 'ventilator', 'cpap', 'dialysis', 'other-medical'] as const;
export type HealthDevice = (typeof healthDevices)[number];

/** Clock hours, 0 to 24. */
export type ClockSpan = readonly [from: number, to: number];

/** What does not fit and has no figure. */
export type PlainMismatch =
  | 'gas-heat-without-gas'
  | 'interlock-without-main'
  | 'inlet-without-switch'
  | 'life-without-second-way'
  | 'nobody-for-engine'
  | 'battery-below-flood';

/** What does not fit, with the figures of both answers; units as in their names. */
export type Mismatch =
  | { readonly id: PlainMismatch }
  | {
      readonly id: 'must-run-over-bill';
      readonly mustKwhPerDay: number;
      readonly billKwhPerDay: number;
    }
  | {
      readonly id: 'month-outside-year';
      readonly monthKwh: number;
      readonly leastKwh: number;
      readonly mostKwh: number;
    }
  | { readonly id: 'cheap-hours-at-peak'; readonly peak: ClockSpan; readonly cheap: ClockSpan }
  | {
      readonly id: 'bill-not-matched';
      readonly dollars: number;
      readonly ownTariff: boolean;
      readonly fit: BillMismatch;
    }
  | {
      readonly id: 'goal-beyond-fuel';
      readonly goalHours: number;
      readonly gallons: number;
      readonly fuelHours: number;
    }
  | { readonly id: 'must-run-at-240'; readonly loads: readonly LoadName[] }
  | { readonly id: 'deep-pump-at-120'; readonly depthFt: number }
  | {
      readonly id: 'pump-volts-amps';
      readonly hp: number;
      readonly volts: number;
      readonly tableAmps: number;
      readonly amps: number;
    }
  | {
      readonly id: 'start-below-run';
      readonly motor: Motor;
      readonly runAmps: number;
      readonly startAmps: number;
    }
  | {
      readonly id: 'over-outlet';
      readonly device: HealthDevice;
      readonly watts: number;
      readonly outletWatts: number;
    }
  | {
      readonly id: 'charger-on-small-service';
      readonly chargerAmps: number;
      readonly mainAmps: number;
    }
  | { readonly id: 'main-over-bus'; readonly mainAmps: number; readonly busAmps: number }
  | { readonly id: 'normal-life-small-budget'; readonly dollars: number }
  | { readonly id: 'apartment-with'; readonly what: 'well' | 'own-sources' }
  | { readonly id: 'roof-over-home'; readonly roofSqFt: number; readonly homeSqFt: number };

/** Two answers that cannot both be right. Nothing is averaged: the household says which one holds. */
export type Contradiction = Mismatch & {
  /** Questions to look at again. */
  readonly questions: readonly QuestionId[];
};

export type Check = (
  home: Home,
  answers: Answers,
  ownTariff: Tariff | null,
) => Contradiction | null;

/** A number that was told; null for one assumed or not given. */
export const told = ({ facts }: Home, id: QuestionId) => (facts.told(id) ? facts.number(id) : null);

/** One of these choices was told, not assumed. */
export const said = <Q extends QuestionId>(
  { facts }: Home,
  id: Q,
  ...choices: readonly ChoiceId<Q>[]
) => facts.told(id) && (facts.is(id, ...choices) || facts.has(id, ...choices));
