import type { Answers } from '../answers';
import type { Interview } from '../questions/question';
import { type Knob, type KnobId, knobsOf } from './knobs';
import type { Tried } from './tried';

/** Questions to answer again in full, with what was tried of each where it is one answer. */
export interface AskAgain {
  readonly ask: readonly string[];
  readonly tried?: Readonly<Record<string, string>>;
}

/** What is tried beside a plan. Nothing of it is written anywhere. */
export interface WhatIf {
  /** The answers of the plan. */
  readonly answers: Answers;
  readonly knobs: readonly Knob[];
  /** The knob that is marked. */
  readonly at: number;
  /** Where a knob stands that was moved. */
  readonly moved: Readonly<Partial<Record<KnobId, number>>>;
  /** First line shown of what the plan would be. */
  readonly scroll: number;
  /** What is to be said about the last key. */
  readonly says: string | null;
  /** How it was left: back to the plan, or to the questions that keep what was moved. */
  readonly left: 'back' | AskAgain | null;
}

export function beginWhatIf(interview: Interview, answers: Answers): WhatIf {
  const knobs = knobsOf(interview, answers);
  return { answers, knobs, at: 0, moved: {}, scroll: 0, says: null, left: null };
}

/** Where a knob stands. */
export function placeOfKnob({ moved }: Pick<WhatIf, 'moved'>, knob: Knob): number {
  return moved[knob.id] ?? knob.now;
}

/** The knobs that stand elsewhere than the answers have them. */
export function movedKnobs(state: WhatIf): Knob[] {
  return state.knobs.filter((knob) => placeOfKnob(state, knob) !== knob.now);
}

/** The answers and the size as they would be. */
export function triedIn(state: WhatIf): Tried {
  return movedKnobs(state).reduce<Tried>(
    (tried, knob) => {
      const { changes, size } = knob.places[placeOfKnob(state, knob)]!;
      return { answers: { ...tried.answers, ...changes }, size: size === 0 ? tried.size : size };
    },
    { answers: state.answers, size: 0 },
  );
}

/** What was tried, by the one question that it answers. */
export function triedSaid(state: WhatIf): Record<string, string> {
  const places = movedKnobs(state).map((knob) => knob.places[placeOfKnob(state, knob)]!);
  return Object.fromEntries(
    places.flatMap(({ asks, said }) => (asks.length === 0 ? [] : [[asks[0]!, said]])),
  );
}

/** The questions that keeping it asks, each once. */
export function asksOf(state: WhatIf): string[] {
  const ids = movedKnobs(state).flatMap((knob) => knob.places[placeOfKnob(state, knob)]!.asks);
  return [...new Set(ids)];
}
