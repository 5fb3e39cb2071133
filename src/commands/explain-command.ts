import interview from '#compiled/questions.js';
import { explainText, figureList } from '../papers/explain/explain-text';
import { explainable } from '../plan/explain/explainable';
import { FIGURE_IDS, type FigureId } from '../plan/explain/figure-ids';
import { makePlan } from '../plan/make-plan';
import { nearWord } from '../quantity/near-word';
import { nameOfFile } from '../store/home-file';
import { wordsIn } from '../words/words-in';
import { DONE, FAILED, WRONG_USAGE } from './exit-codes';
import { homeFromFile } from './home-from-file';
import { tariffFromFile } from './own-tariff';
import { printErr, printOut } from './print';
import { PLANNING, withProgress } from './progress';
import type { Arguments } from './read-arguments';
import { readerOf } from './talk/explained-figures';

/** Columns of the lines, whatever the terminal: they are read, kept and sent on. */
const COLUMNS = 80;

/** `lampkeeper explain HOME [FIGURE]`: the figures of a plan, or how one of them was worked out. */
export async function explainCommand(args: Arguments): Promise<number> {
  const [path, typed, ...more] = args.rest;
  if (path === undefined || more.length > 0) {
    printErr('explain takes one home and one figure: lampkeeper explain kim price\n');
    return WRONG_USAGE;
  }
  if (typed !== undefined && !isFigureId(typed)) {
    printErr(`${unknown(typed)}\n`);
    return WRONG_USAGE;
  }
  const home = await homeFromFile(path, args.asOf);
  if (!home.ok) {
    printErr(`${home.says}\n`);
    return FAILED;
  }
  const own = args.tariff === null ? null : await tariffFromFile(args.tariff);
  if (own !== null && !own.ok) {
    printErr(`${own.says}\n`);
    return FAILED;
  }
  const answers = { ...home.answers, 'home-name': nameOfFile(path) };
  const tariff = own?.tariff ?? home.tariff;
  const plan = withProgress(PLANNING, () =>
    makePlan(interview, answers, home.asOf, undefined, tariff),
  );
  const words = await wordsIn('en');
  const reader = readerOf(words, COLUMNS);
  const all = explainable(plan);
  if (typed === undefined) {
    printOut(`${[...figureList(all, reader), '', words.explain.how].join('\n')}\n`);
    return DONE;
  }
  const found = all.find(({ id }) => id === typed);
  if (found === undefined) {
    printErr(
      `${words.explain.notInPlan(
        typed,
        all.map(({ id }) => id),
      )}\n`,
    );
    return FAILED;
  }
  printOut(`${explainText(found, reader).join('\n')}\n`);
  return DONE;
}

const isFigureId = (word: string): word is FigureId =>
  (FIGURE_IDS as readonly string[]).includes(word);

function unknown(typed: string): string {
  const near = nearWord(typed, FIGURE_IDS);
  const hint = near === null ? '' : ` Did you mean "${near}"?`;
  return `There is no figure "${typed}".${hint} There are: ${FIGURE_IDS.join(', ')}.`;
}
