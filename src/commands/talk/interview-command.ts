import { existsSync } from 'node:fs';
import { dirname, resolve as resolvePath } from 'node:path';
import interview from '#compiled/questions.js';
import type { Tariff } from '../../bill/tariff/tariff';
import type { Later } from '../../faces/door';
import { sayTakenOver } from '../../faces/home-choice';
import { changeAfterPlan, sameAnswers } from '../../interview/after-plan';
import type { Answers } from '../../interview/answers';
import { begin, welcome } from '../../interview/begin';
import { besideTariff } from '../../interview/beside-tariff';
import type { Context, State } from '../../interview/state';
import type { Unfinished } from '../../interview/unfinished';
import { homeFileName, nameOfFile } from '../../store/home-file';
import { callName } from '../call-name';
import { isCommand } from '../command-table';
import { DONE, FAILED, INTERRUPTED, WRONG_USAGE } from '../exit-codes';
import { printErr } from '../print';
import type { Arguments } from '../read-arguments';
import { type Chosen, whichHome } from '../which-home';
import { mayColor, whyLines } from './choose-face';
import type { Outcome, WrittenPlan } from './finish-with-plan';
import type { Keeping, Settled } from './keeping';

/** What one run of the interview keeps in mind: which file, since when. */
interface Sitting {
  readonly args: Arguments;
  /** The file named on the command line. */
  readonly given: string | null;
  asOf: string;
  answers: Answers;
  unfinished: Unfinished;
  /** The household's own tariff, from its home file or from --tariff. */
  tariff: Tariff | null;
  /** Ids of answers that came from another home of the street. */
  takenOver: readonly string[];
  /** Why nothing may be written: somebody sits at this home already. */
  looking: string | null;
  /** What is read line by line has come to its end. */
  inputEnded: boolean;
  /** Keeps the answers, once loaded. */
  keeping: Keeping | null;
  /** The plan written last, to go back to it where nothing was changed. */
  written: WrittenPlan | null;
}

/** `lampkeeper [interview] [FILE]`: ask, keep, and write the plan. */
export async function interviewCommand(args: Arguments): Promise<number> {
  const [given = null, ...more] = args.rest;
  if (more.length > 0) {
    printErr('interview takes one home file, or none.\n');
    return WRONG_USAGE;
  }
  if (args.sharedScreen) {
    const why = (await import('./shared-screen')).whyNotShared(args);
    if (why !== null) {
      printErr(`${why}\n`);
      return WRONG_USAGE;
    }
  }
  let chosen =
    given === null ? await whichHome(args, interruptedCode()) : { file: given, like: null };
  let isFirst = true;
  for (;;) {
    if (typeof chosen === 'number') return chosen;
    const outcome = await sit(args, chosen, isFirst);
    if (!outcome.next) return outcome.code;
    if (args.sharedScreen) (await import('./shared-screen')).clearScreen();
    isFirst = false;
    chosen = await whichHome(args, interruptedCode());
  }
}

/** One home, from the first question to its plan or to where it was left. */
async function sit(args: Arguments, chosen: Chosen, isFirst: boolean): Promise<Outcome> {
  const { file: given, like } = chosen;
  const asOf = args.asOf ?? today();
  let taken: string | null = null;
  const sitting: Sitting = {
    args,
    given,
    asOf,
    answers: {},
    unfinished: {},
    tariff: null,
    takenOver: [],
    looking: null,
    inputEnded: false,
    keeping: null,
    written: null,
  };
  if (given !== null) {
    const failed = await takeUp(sitting, given);
    if (failed !== null) {
      printErr(`${failed}\n`);
      return { code: FAILED, next: false };
    }
  }
  if (like !== null) {
    const { takeOver } = await import('./take-over');
    const { answers, tariff, names } = await takeOver(like);
    Object.assign(sitting, { answers, tariff, takenOver: Object.keys(answers) });
    if (names.length > 0) taken = sayTakenOver(names);
  }
  if (args.tariff !== null) {
    const { tariffFromFile } = await import('../own-tariff');
    const own = await tariffFromFile(args.tariff);
    if (!own.ok) {
      printErr(`${own.says}\n`);
      return { code: FAILED, next: false };
    }
    sitting.tariff = own.tariff;
  }
  const context = contextOf(sitting);
  const begun = begin(context, sitting.answers, sitting.unfinished);
  const unsaved = sitting.looking ?? (await placeProblem(given));
  const notice = taken ?? begun.notice;
  const isNew = isFirst && (given === null || !existsSync(given));
  const start = { ...(isNew && like === null ? welcome(begun) : begun), unsaved, notice };
  let state = await ask(sitting, context, start);
  const nothing = sitting.inputEnded && sameAnswers(start.answers, state.answers);
  const outcome = await close(sitting, async () => {
    let closed = await closeOnce(sitting, state);
    // From the plan to a question and back, as often as is wished.
    while (closed.again !== undefined) {
      state = await ask(sitting, context, changeAfterPlan(context, state, closed.again));
      closed = await closeOnce(sitting, state);
    }
    return closed;
  });
  if (!nothing || outcome.code !== DONE) return outcome;
  printErr('Standard input ended before the first answer.\n');
  return ended(FAILED);
}

/** Why nothing can be kept where this home goes, tried before the first question; null when it can. */
async function placeProblem(given: string | null): Promise<string | null> {
  const { folderProblem } = await import('../../store/sitting-lock');
  const { saySystemError } = await import('../../store/say-system-error');
  const folder = dirname(given ?? homeFileName('my-home'));
  const problem = folderProblem(folder);
  if (problem === null) return null;
  return `Nothing can be kept here. ${saySystemError(problem, 'write', resolvePath(folder))}`;
}

/** What keeps the answers of this sitting, loaded once. */
async function keepingOf(sitting: Sitting): Promise<Keeping> {
  const { Keeping } = await import('./keeping');
  sitting.keeping ??= new Keeping(sitting, interview, () => fileOf(sitting));
  return sitting.keeping;
}

/** Read the home begun before, or note the name of a new one. */
async function takeUp(sitting: Sitting, path: string): Promise<string | null> {
  const name = nameOfFile(path).toLowerCase();
  if (!existsSync(path)) {
    if (isCommand(name)) return commandName(name);
    sitting.answers = { 'home-name': name };
    return null;
  }
  const { homeFromFile } = await import('../home-from-file');
  // First alone at the home, then read: nothing may come between.
  (await keepingOf(sitting)).sitDown(path);
  const home = await homeFromFile(path, sitting.args.asOf);
  if (!home.ok) return home.says;
  sitting.tariff = home.tariff;
  sitting.asOf = home.asOf;
  sitting.answers = { ...home.answers, 'home-name': name };
  sitting.unfinished = home.unfinished;
  return null;
}

function contextOf(sitting: Sitting): Context {
  const taken = (name: string) => existsSync(homeFileName(name)) && !isGiven(sitting, name);
  return {
    interview: besideTariff(interview, sitting.tariff !== null),
    short: sitting.args.short,
    guided: true,
    listFirst: sitting.args.change,
    takenOver: sitting.takenOver,
    nameProblem: (name) => {
      const { given } = sitting;
      if (given !== null && name !== nameOfFile(given).toLowerCase()) {
        return `This home is named after its file, ${given}. Rename the file when you have stopped.`;
      }
      if (isCommand(name)) {
        return commandName(name);
      }
      return taken(name)
        ? `A home called "${name}" is in this folder already; "${callName(process.env)} ${homeFileName(name)}" goes on with it. Type another name here.`
        : null;
    },
    spareName: () => {
      const free = ['my-home', ...Array.from({ length: 98 }, (_, i) => `my-home-${i + 2}`)];
      return free.find((name) => !taken(name)) ?? 'my-home-100';
    },
  };
}

function commandName(name: string): string {
  return `"${name}" is a command of lampkeeper. Type another name, for example ${name}-house.`;
}

function isGiven(sitting: Sitting, name: string): boolean {
  if (sitting.given === null) return sitting.answers['home-name'] === name;
  return resolvePath(sitting.given) === resolvePath(homeFileName(name));
}

async function ask(sitting: Sitting, context: Context, start: State): Promise<State> {
  const { stdin, stdout, env } = process;
  const color = mayColor(env, sitting.args.color);
  const door = { context, start, later: later(sitting), color, stdin, stdout };
  if (whyScreenless(sitting) !== null) {
    const { runLines } = await import('../../faces/lines/run-lines');
    const onInputEnd = () => {
      sitting.inputEnded = true;
    };
    return runLines({ ...door, onInputEnd });
  }
  if (!color) env.FORCE_COLOR = '0';
  const { runScreen } = await import('../../faces/screen/run-screen');
  if (!sitting.args.sharedScreen) return runScreen(door);
  const { namesHere } = await import('./shared-screen');
  return runScreen({ ...door, shared: { names: namesHere() } });
}

/** What the first question does not need is loaded while it is being read: what keeps answers first. */
async function later(sitting: Sitting): Promise<Later> {
  await new Promise((resolve) => setTimeout(resolve, 20));
  const keeping = await keepingOf(sitting);
  const { laterApart, laterInOne } = await import('./later');
  const of = [keeping, sitting.tariff, sitting.asOf] as const;
  return whyScreenless(sitting) === null ? laterApart(...of) : laterInOne(...of);
}

/** The file of this home: the one named at the start, else NAME.home.yaml in this folder. */
function fileOf(sitting: Sitting): string | null {
  if (sitting.given !== null) return sitting.given;
  const name = sitting.answers['home-name'];
  return typeof name === 'string' ? homeFileName(name) : null;
}

/** The home is given up when all is done, whatever happens. */
async function close(sitting: Sitting, end: () => Promise<Outcome>): Promise<Outcome> {
  const keeping = await keepingOf(sitting);
  try {
    return await end();
  } finally {
    keeping.leave();
  }
}

/** The end of what was asked: what is on the disk is read again before it is said to be there. */
async function closeOnce(sitting: Sitting, state: State): Promise<Outcome> {
  const keeping = await keepingOf(sitting);
  return closeSettled(sitting, state, keeping, keeping.settle(state.answers, state.unfinished));
}

async function closeSettled(
  sitting: Sitting,
  state: State,
  keeping: Keeping,
  settled: Settled,
): Promise<Outcome> {
  if (state.ending === 'plan') {
    const { finishWithPlan } = await import('./finish-with-plan');
    const { answers } = state;
    const { asOf, tariff, args, looking } = sitting;
    const { written } = sitting;
    const finished = { answers, asOf, tariff, args, looking, keeping, settled, written };
    return finishWithPlan(finished, (now) => {
      sitting.written = now;
    });
  }
  if (state.ending === 'danger') {
    if (whyScreenless(sitting) === null) await repeatDanger(state);
    printErr('Stopped, so that you can deal with it now. Come back when everyone is safe.\n');
  }
  const { sayMissing } = await import('../say-settled');
  if (await sayMissing(keeping, settled, sitting.args)) return ended(FAILED);
  const stopped = state.ending === 'danger' ? '' : 'Stopped. ';
  const { file } = settled;
  if (file !== null) {
    const begins = state.ending === 'interrupted' ? stopped : '';
    const call = callName(process.env);
    const where = `Your answers are in ${file}.\nTo go on: ${call} ${file}\n`;
    // Others see the screen, and the file is named after the home.
    const hidden = 'Your answers are in a file in this folder.\n';
    printErr(`${begins}${sitting.args.sharedScreen ? hidden : where}`);
  } else if (stopped !== '') {
    printErr(`${stopped}Nothing was kept yet.\n`);
  }
  return ended(state.ending === 'interrupted' ? interruptedCode() : DONE);
}

function interruptedCode(): number {
  return process.env.npm_lifecycle_event === 'start' ? DONE : INTERRUPTED;
}

function whyScreenless({ args }: Sitting): string | null {
  const { stdin, stdout, env } = process;
  return whyLines({ env, stdin, stdout, plain: args.plain });
}

/** The screen that said what to do is gone: it is printed once more. */
async function repeatDanger(state: State): Promise<void> {
  const { dangerWords } = await import('../danger-words');
  printErr(`${dangerWords(state, process.stderr.columns)}\n`);
}

function ended(code: number): Outcome {
  return { code, next: false };
}

/** Today, by the clock of the person at the keyboard, YYYY-MM-DD. */
function today(): string {
  const now = new Date();
  const two = (n: number) => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
