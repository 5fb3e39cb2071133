import interview from '#compiled/questions.js';
import { COLUMNS_FROM, compareLines } from '../faces/compare-lines';
import { wrapText } from '../faces/screen/line';
import { besideTariff } from '../interview/beside-tariff';
import { stillOpen } from '../interview/questions/relevant';
import { readTried } from '../interview/what-if/read-tried';
import type { Tried, TriedThing } from '../interview/what-if/tried';
import { whatIfWords } from '../interview/what-if/what-if-words';
import { changesBetween } from '../plan/changes/changes-between';
import { quickPlans } from '../plan/changes/quick-plan';
import { visible } from '../quantity/visible';
import { nameOfFile, sayFault } from '../store/home-file';
import { wordsIn } from '../words/words-in';
import { callName } from './call-name';
import { changeCall } from './change-call';
import { DONE, FAILED, WRONG_USAGE } from './exit-codes';
import { homeFromFile } from './home-from-file';
import { printErr, printOut } from './print';
import { PLANNING, withProgress } from './progress';
import type { Arguments } from './read-arguments';

/** Columns where the output is no terminal, and the least and the most that are filled. */
const COLUMNS = { usual: 80, least: 40, most: 100 };

/** `lampkeeper whatif HOME key=value ...`: the plan before and after, side by side. It writes nothing. */
export async function whatifCommand(args: Arguments): Promise<number> {
  const [path, ...pairs] = args.rest;
  if (path === undefined || pairs.length === 0) {
    printErr(
      'whatif takes one home and what to try, such as: lampkeeper whatif kim goal=48. What can be tried: lampkeeper help whatif\n',
    );
    return WRONG_USAGE;
  }
  const home = await homeFromFile(path, args.asOf);
  if (!home.ok) {
    printErr(`${home.says}\n`);
    return FAILED;
  }
  for (const remark of home.remarks) printErr(`${sayFault(path, remark)}\n`);
  const answers = { ...home.answers, 'home-name': nameOfFile(path) };
  const asked = besideTariff(interview, home.tariff !== null);
  const read = readTried(asked, answers, pairs);
  if (!read.ok) {
    printErr(`${read.says}\n`);
    return WRONG_USAGE;
  }
  const { tried, things } = read;
  for (const { says, then } of things.filter(({ unusual }) => unusual === true)) {
    printErr(`${whatIfWords.unusual(says, then)}\n`);
  }
  const found = withProgress(PLANNING, () => {
    const factsOf = quickPlans(interview, home.asOf, home.tariff !== null);
    return { before: factsOf({ answers, size: 0 })!, after: factsOf(tried) };
  });
  if (found.after === null) {
    printErr(`${whatIfWords.noSuchSize}\n`);
    return FAILED;
  }
  const words = await wordsIn('en');
  const said = words.changes(changesBetween(found.before, found.after));
  const wide = Math.max(COLUMNS.least, process.stdout.columns ?? COLUMNS.usual);
  const width = Math.min(COLUMNS.most, wide);
  const stand = args.plain || width < COLUMNS_FROM ? 'stacked' : 'columns';
  const lines = [
    ...things.flatMap((thing) => wrapText(sayThing(thing), width)),
    '',
    ...compareLines(said, { width, stand, sides: { before: 'Now', after: 'What if' } }),
    ...opens(answers, tried).flatMap((text) => ['', ...wrapText(text, width)]),
    '',
    ...wrapText(
      `Nothing was written. To keep it, answer the question itself: ${changeCall(callName(process.env), false, path)}`,
      width,
    ),
  ];
  printOut(`${visible(lines.join('\n'))}\n`);
  return DONE;
}

const sayThing = ({ says, now, then }: TriedThing) => `What if. ${says}: ${then} (now: ${now}).`;

/** Questions that what is tried would bring up, and that are taken as "not sure" until then. */
function opens(answers: Tried['answers'], tried: Tried): string[] {
  const before = new Set(stillOpen({ interview, short: false }, answers).map(({ id }) => id));
  const more = stillOpen({ interview, short: false }, tried.answers).filter(
    ({ id }) => !before.has(id),
  );
  if (more.length === 0) return [];
  return [whatIfWords.bringsUp(more.map(({ says }) => says))];
}
