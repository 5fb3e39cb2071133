import type { ChoiceId } from '#compiled/question-ids.js';
import type { PlainReason } from './plain-reason';

/** A reason with figures or answers of this home in it. */
export type FiguredReason =
  | { readonly code: 'solar-over-battery'; readonly solarKw: number; readonly batteryKw: number }
  | { readonly code: 'hot-outdoors'; readonly hotF: number }
  | { readonly code: 'storage-over-limit'; readonly kwh: number; readonly limitKwh: number }
  | { readonly code: 'fuel-over-limit'; readonly gallons: number; readonly limitGallons: number }
  | { readonly code: 'goal-of-hours'; readonly hours: number }
  | { readonly code: 'home-lies-high'; readonly feet: number }
  | { readonly code: 'main-over-bus'; readonly mainAmps: number; readonly busAmps: number }
  | { readonly code: 'charger-on-service'; readonly chargerAmps: number; readonly mainAmps: number }
  | {
      readonly code: 'room-on-bus';
      readonly busAmps: number;
      readonly mainAmps: number;
      readonly roomAmps: number;
    }
  | { readonly code: 'electric-heat-kw' | 'electric-heat-kw-maybe'; readonly kw: number }
  | { readonly code: 'service-amps'; readonly amps: number }
  | {
      readonly code:
        | 'told-ill-from'
        | 'not-known-ill-from'
        | 'more-risk-from'
        | 'not-known-more-risk-from';
      readonly by: 'heat' | 'cold';
    }
  | {
      readonly code: 'longest-over-goal';
      readonly longestHours: number;
      readonly goalHours: number;
    }
  | {
      readonly code: 'leave-in-hand';
      readonly life: Reason;
      readonly tripHours: number;
      readonly leaveHours: number;
    }
  | { readonly code: 'team-not-told'; readonly missing: readonly ChoiceId<'device-team'>[] }
  | {
      readonly code: 'few-short-outages';
      readonly timesAYear: number;
      readonly longestHours: number;
    };

/** Why a rule speaks, as a code; `words` says it. */
export type Reason = PlainReason | FiguredReason;

export const reasonCode = (reason: Reason): string =>
  typeof reason === 'string' ? reason : reason.code;
