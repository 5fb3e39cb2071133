import interview from '#compiled/questions.js';
import { begin, show, welcome } from '../../src/interview/begin';
import { reduce } from '../../src/interview/reduce';
import type { Context, State } from '../../src/interview/state';
import { answersOf } from '../households/read-household';

export const context: Context = {
  interview,
  short: false,
  guided: true,
  nameProblem: () => null,
  spareName: () => 'a',
};
export const told = { ...answersOf('birch-street'), 'home-name': 'kim' };
const base: State = { ...begin(context, {}), answers: told };
export const at = (id: string) => show(context, base, id);
const why = 'It decides between a generator with cords and one wired to the house: about $730.';
const danger = (...ids: string[]) =>
  reduce(context, begin(context, {}), { type: 'answer', answer: ids });
export const later: State = { ...base, at: 'budget-now', row: -1 };

/** Every view, with the words its title begins with. */
export const views: readonly (readonly [name: string, state: State, title: string])[] = [
  ['welcome', welcome(begin(context, {})), 'Lampkeeper: a plan'],
  ['danger', begin(context, {}), 'Is anything dangerous'],
  ['a field', at('home-zip'), "What is the home's"],
  [
    'ticks',
    { ...at('must-run'), next: { code: 'ask', questionId: 'must-run', why, left: 9 } },
    'What must keep',
  ],
  ['a long list', { ...at('big-loads'), row: 3 }, 'Which of these'],
  [
    'an error',
    {
      ...at('main-amps'),
      error: 'We could not read "lots" as a number in amps. For "Main breaker" type one in digits.',
    },
    'What number',
  ],
  [
    'unusual',
    { ...at('people-count'), view: 'unusual', row: -1, unusual: { value: 30, said: '30 people' } },
    'How many people',
  ],
  ['help', reduce(context, at('main-amps'), { type: 'act', act: 'help' }), 'What number'],
  ['act now', danger('gas-smell', 'unwell', 'water-electric'), 'Do this now'],
  ['tonight', { ...danger('power-off'), view: 'tonight', row: -1 }, 'What to do tonight'],
  ['tonight-help', { ...danger('power-off'), view: 'tonight-help' }, 'What to do tonight'],
  ['first plan', { ...later, view: 'first-plan' }, 'A first plan'],
  ['waiting', { ...later, view: 'wait' }, 'One moment'],
  [
    'enough',
    { ...later, view: 'enough', next: { code: 'enough', sharpen: 4, again: [] } },
    'Nothing we could',
  ],
  ['answers', { ...later, view: 'check', row: 5 }, 'Check your answers'],
  ['read back', { ...later, view: 'read-back', row: 0 }, 'Before the plan'],
  [
    'walk',
    { ...later, view: 'walk', answers: { ...told, 'main-amps': 'not sure' } },
    'My list to look at',
  ],
];
