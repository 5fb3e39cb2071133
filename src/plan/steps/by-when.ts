import type { StepId } from './next-step';

/** By when a step is done: what guards a life this week, what decides a purchase before it, the rest before the season. */
export type ByWhen =
  | 'this-week'
  | 'before-buying'
  | 'with-purchase'
  | 'before-first-use'
  | 'before-season';

/** By when each step is done, in the order of the plan. Our judgement. */
export const byWhen: Readonly<Record<StepId, ByWhen>> = {
  'agree-on-device': 'this-week',
  'on-the-lists': 'this-week',
  settle: 'this-week',
  alarms: 'this-week',
  'store-water': 'this-week',
  'find-out': 'before-buying',
  'find-out-first': 'before-buying',
  'one-room': 'before-buying',
  panel: 'this-week',
  'buy-first': 'with-purchase',
  buy: 'with-purchase',
  quotes: 'before-buying',
  permits: 'before-buying',
  'ask-association': 'before-buying',
  'grid-approval': 'before-first-use',
  'gas-supply': 'before-buying',
  order: 'with-purchase',
  measure: 'before-buying',
  fuel: 'before-season',
  'price-beside': 'before-buying',
  'tell-insurer': 'before-buying',
  rehearse: 'before-season',
};
