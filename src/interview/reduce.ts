import { accept, onAct, submitTyped } from './act';
import type { Event } from './event';
import { openFromList, takeNext } from './go-on';
import { onKey } from './keys/on-key';
import { fieldOf } from './keys/text-field';
import type { Context, State } from './state';
import { takeOutside } from './take-outside';

/** The interview after an event. Pure; an ended interview stays as it is. */
export function reduce(context: Context, state: State, event: Event): State {
  if (state.ending !== null) return state;
  switch (event.type) {
    case 'key':
      return onKey(context, state, event.key);
    case 'answer':
      return accept(context, { ...state, notice: null }, event.answer);
    case 'typed':
      return submitTyped(context, { ...state, field: fieldOf(event.text) });
    case 'act':
      return onAct(context, state, event.act);
    case 'open':
      return openFromList(context, state, event.question);
    case 'next':
      return takeNext(context, state, event.next);
    case 'scroll':
      return { ...state, scroll: Math.max(0, state.scroll + event.by) };
    case 'notice':
      return { ...state, notice: event.text };
    case 'unsaved':
      return { ...state, unsaved: event.text };
    case 'outside':
      return takeOutside(context, state, event);
  }
}
