import type { Answers } from '../../../interview/answers';
import type { Key } from '../../../interview/keys/key';
import type { Interview } from '../../../interview/questions/question';
import { reduceWhatIf } from '../../../interview/what-if/reduce-what-if';
import { beginWhatIf, triedIn } from '../../../interview/what-if/what-if-state';
import type { WhatIfApart } from '../../door';
import { glyphsFor } from '../glyphs';
import { type WhatIfSaid, whatIfFrame } from '../views/what-if';
import { sizeOf } from '../watch-size';
import type { Beside, BesideView } from './read-plan';

/** What the view over the plan is made from. */
export interface WhatIfOver {
  readonly name: string;
  readonly interview: Interview;
  readonly answers: Answers;
  readonly apart: WhatIfApart;
  readonly stdout: NodeJS.WriteStream;
}

/** The key that opens what if from the plan. */
export function whatIfKey(over: WhatIfOver): Beside {
  return { letter: 'w', says: 'what if', open: (redraw) => openWhatIf(over, redraw) };
}

/** What if over the plan. Figures are worked out apart: a key never waits for them, and only the newest are asked for. */
function openWhatIf(over: WhatIfOver, redraw: () => void): BesideView {
  const { name, interview, answers, apart, stdout } = over;
  const glyphs = glyphsFor(process.env);
  let state = beginWhatIf(interview, answers);
  let said: WhatIfSaid = 'working';
  let saidOf: unknown = null;
  const partsNow = () => {
    const isCurrent = saidOf === state.moved;
    return { name, state, said, isCurrent, size: sizeOf(stdout), glyphs };
  };
  const look = () => {
    const asked = state.moved;
    apart.look(answers, triedIn(state), (found) => {
      said = found;
      saidOf = asked;
      redraw();
    });
  };
  look();
  return {
    frame: (size, shared) => whatIfFrame({ ...partsNow(), size, shared }),
    step: () => 'what-if',
    take: (key: Key) => {
      const before = state;
      const by = scrollBy(key);
      if (by === 0) state = reduceWhatIf(state, { type: 'key', key });
      else {
        const { page, maxScroll } = whatIfFrame(partsNow());
        const from = Math.min(state.scroll, maxScroll);
        const to = Math.min(maxScroll, from + by * Math.max(1, page - 1));
        state = reduceWhatIf(state, { type: 'scroll', to });
      }
      if (state.moved !== before.moved) look();
      if (state.left === null) return 'stay';
      return state.left;
    },
  };
}

function scrollBy(key: Key): -1 | 0 | 1 {
  if (key.name === 'page-down' || (key.name === 'text' && key.text === ' ')) return 1;
  return key.name === 'page-up' ? -1 : 0;
}
