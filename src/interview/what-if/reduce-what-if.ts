import type { Key } from '../keys/key';
import { asksOf, movedKnobs, placeOfKnob, triedSaid, type WhatIf } from './what-if-state';
import { whatIfWords } from './what-if-words';

export type WhatIfEvent =
  | { readonly type: 'key'; readonly key: Key }
  /** Scroll what is shown, by so many lines; the face knows how far it goes. */
  | { readonly type: 'scroll'; readonly to: number }
  /** A knob put to a place outright, as the line face does. */
  | { readonly type: 'put'; readonly knob: number; readonly place: number };

/** What is tried after an event. Pure; what was left stays as it is. */
export function reduceWhatIf(state: WhatIf, event: WhatIfEvent): WhatIf {
  if (state.left !== null) return state;
  switch (event.type) {
    case 'scroll':
      return { ...state, scroll: Math.max(0, event.to) };
    case 'put':
      return put({ ...state, at: event.knob, says: null }, event.place);
    case 'key':
      return onKey({ ...state, says: null }, event.key);
  }
}

function onKey(state: WhatIf, key: Key): WhatIf {
  const { knobs, at } = state;
  const knob = knobs[at]!;
  const place = placeOfKnob(state, knob);
  switch (key.name) {
    case 'up':
      return { ...state, at: at === 0 ? knobs.length - 1 : at - 1 };
    case 'down':
      return { ...state, at: (at + 1) % knobs.length };
    case 'left':
      return put(state, place - 1);
    case 'right':
      return put(state, place + 1);
    case 'backspace':
    case 'delete':
      return put(state, knob.now);
    case 'enter':
      return keep(state);
    case 'escape':
      return { ...state, left: 'back' };
    default:
      return state;
  }
}

function put(state: WhatIf, place: number): WhatIf {
  const knob = state.knobs[state.at];
  if (knob === undefined) return state;
  if (place < 0 || place >= knob.places.length) return { ...state, says: whatIfWords.end };
  const { [knob.id]: _, ...others } = state.moved;
  const moved = place === knob.now ? others : { ...others, [knob.id]: place };
  return { ...state, moved, scroll: 0 };
}

/** Keeping asks the questions themselves, in full; a size has none. */
function keep(state: WhatIf): WhatIf {
  if (movedKnobs(state).length === 0) return { ...state, says: whatIfWords.moveFirst };
  const ask = asksOf(state);
  if (ask.length === 0) return { ...state, says: whatIfWords.keepsNoSize };
  return { ...state, left: { ask, tried: triedSaid(state) } };
}
