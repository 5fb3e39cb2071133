import { show } from './begin';
import type { Event } from './event';
import { isToAsk, relevant } from './questions/relevant';
import type { Context, State } from './state';
import { setAside } from './unfinished';

/** The home as somebody else changed it meanwhile. What both sides answered is asked again, the first of it at once. */
export function takeOutside(
  context: Context,
  state: State,
  { answers, ask, text }: Event & { type: 'outside' },
): State {
  const asked = relevant(context, answers);
  const order = asked.map(({ id }) => id);
  const taken: State = { ...state, answers, notice: text };
  const again = order.find((id) => ask.includes(id));
  if (again !== undefined && again !== state.at) {
    const left = setAside(context, taken);
    const trail = left.trail.filter((id) => order.includes(id));
    const ahead = order.includes(state.at) ? [...left.ahead, state.at] : left.ahead;
    return { ...show(context, { ...left, trail, ahead, fromCheck: false }, again), notice: text };
  }
  if (again !== undefined || order.includes(state.at) || state.view === 'check') return taken;
  // The question on the screen is no longer asked of this home.
  const open = asked.find((one) => isToAsk(one, answers))?.id ?? order[0]!;
  return { ...show(context, { ...taken, trail: [], ahead: [] }, open), notice: text };
}
