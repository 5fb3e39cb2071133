import interview from '#compiled/questions.js';
import { besideTariff } from '../interview/beside-tariff';
import { stopsOf, walkList } from '../interview/walk';
import { sayUnit } from '../interview/words';
import { formTitles, walkForm } from '../papers/walk-form';
import { nameOfFile } from '../store/home-file';
import { callName } from './call-name';
import { DONE, FAILED, WRONG_USAGE } from './exit-codes';
import { homeFromFile } from './home-from-file';
import { printErr, printOut } from './print';
import type { Arguments } from './read-arguments';

const SAFE =
  'Take a pen and a flashlight. Open only the small door of the panel, leave every screwed cover on, and touch no wire. If something is hot, buzzes or smells, go away from it and call an electrician.';

/** `lampkeeper form [HOME]`: what to look at in a home, or the whole bank, as a form to print. */
export async function formCommand(args: Arguments): Promise<number> {
  const [path, ...more] = args.rest;
  if (more.length > 0) {
    printErr('form takes one home, or none: lampkeeper form kim\n');
    return WRONG_USAGE;
  }
  if (path === undefined) {
    printOut(wholeForm());
    return DONE;
  }
  const home = await homeFromFile(path, null);
  if (!home.ok) {
    printErr(`${home.says}\n`);
    return FAILED;
  }
  const context = { interview: besideTariff(interview, home.tariff !== null), short: false };
  const parts = walkList(context, home.answers).map(({ place, questions }) => ({
    title: formTitles[place],
    questions,
  }));
  const name = nameOfFile(path);
  const then = `Back at the computer: ${callName(process.env)} --change ${name}, then "My list to look at".`;
  const intro = parts.length > 0 ? [SAFE, then] : ['Nothing is on the list of this home.'];
  printOut(walkForm({ title: `To look at: ${name}`, intro, parts, sayUnit }));
  return DONE;
}

/** All questions: first what is known from the sofa, by topic, then place by place. Danger is asked of people, not of paper. */
function wholeForm(): string {
  const stops = stopsOf(interview, interview.questions);
  const walked = new Set(stops.flatMap(({ questions }) => questions.map(({ id }) => id)));
  const talked = interview.topics.map(({ id, title }) => ({
    title,
    questions: interview.questions.filter(
      (one) => one.topic === id && !walked.has(one.id) && one.id !== interview.dangers.question,
    ),
  }));
  const parts = [
    ...talked.filter(({ questions }) => questions.length > 0),
    ...stops.map(({ place, questions }) => ({ title: formTitles[place], questions })),
  ];
  const intro = [
    'If anything is dangerous right now (a smell of gas, someone who feels ill, a hot panel, water near power, a wire down), stop here: get out and call 911.',
    SAFE,
    'Skip what your home does not have. Leave empty what you do not know.',
  ];
  return walkForm({ title: 'Questions about your home', intro, parts, sayUnit });
}
