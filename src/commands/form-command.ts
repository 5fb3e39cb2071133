import interview from '#compiled/questions.js';
import { besideTariff } from '../interview/beside-tariff';
import { isMeasured, measuredRows } from '../interview/measured-rows';
import { stopsOf, walkList } from '../interview/walk';
import { sayUnit } from '../interview/words';
import { walkForm } from '../papers/walk-form';
import { nameOfFile } from '../store/home-file';
import type { Words } from '../words/words';
import { wordsIn } from '../words/words-in';
import { callName } from './call-name';
import { DONE, FAILED, WRONG_USAGE } from './exit-codes';
import { homeFromFile } from './home-from-file';
import { printErr, printOut } from './print';
import type { Arguments } from './read-arguments';

/** `lampkeeper form [HOME]`: what to look at in a home, or the whole bank, as a form to print. */
export async function formCommand(args: Arguments): Promise<number> {
  const [path, ...more] = args.rest;
  if (more.length > 0) {
    printErr('form takes one home, or none: lampkeeper form kim\n');
    return WRONG_USAGE;
  }
  const words = await wordsIn('en');
  const say = words.form;
  if (path === undefined) {
    printOut(wholeForm(words));
    return DONE;
  }
  const home = await homeFromFile(path, null);
  if (!home.ok) {
    printErr(`${home.says}\n`);
    return FAILED;
  }
  const context = { interview: besideTariff(interview, home.tariff !== null), short: false };
  const parts = walkList(context, home.answers).map(({ place, questions }) => ({
    title: say.places[place],
    questions,
  }));
  const measured = measuredRows(interview, home.answers);
  const name = nameOfFile(path);
  const then = say.backAtTheComputer(callName(process.env), name);
  const intro = parts.length > 0 ? [say.safe, then] : [say.nothing];
  printOut(walkForm({ title: say.titleOf(name), intro, parts, measured, sayUnit }, words));
  return DONE;
}

/** All questions: first what is known from the sofa, by topic, then place by place. Danger is asked of people, not of paper. */
function wholeForm(words: Words): string {
  const say = words.form;
  const stops = stopsOf(interview, interview.questions);
  const walked = new Set(stops.flatMap(({ questions }) => questions.map(({ id }) => id)));
  const talked = interview.topics.map(({ id, title }) => ({
    title,
    questions: interview.questions.filter(
      (one) =>
        one.topic === id &&
        !walked.has(one.id) &&
        one.id !== interview.dangers.question &&
        !isMeasured(one),
    ),
  }));
  const parts = [
    ...talked.filter(({ questions }) => questions.length > 0),
    ...stops.map(({ place, questions }) => ({ title: say.places[place], questions })),
  ];
  const intro = [say.dangerFirst, say.safe, say.skip];
  const measured = measuredRows(interview, null);
  return walkForm({ title: say.title, intro, parts, measured, sayUnit }, words);
}
