import { type Rule, yes } from '../rule';

/** A main breaker larger than the bus it protects. */
export const mainOverBus: Rule = {
  id: 'main-over-bus',
  applies: ({ facts }) => {
    const mainAmps = facts.told('main-amps') ? facts.number('main-amps') : null;
    const busAmps = facts.told('panel-bus') ? facts.number('panel-bus') : null;
    return mainAmps !== null && busAmps !== null && mainAmps > busAmps
      ? yes({ code: 'main-over-bus', mainAmps, busAmps })
      : null;
  },
};
