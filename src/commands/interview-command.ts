import { existsSync } from 'node:fs';
import { resolve as resolvePath } from 'node:path';
import interview from '#compiled/questions.js';
import type { Tariff } from '../bill/tariff';
import type { Later } from '../faces/door';
import type { Answers } from '../interview/answers';
import { begin } from '../interview/begin';
import { besideTariff } from '../interview/beside-tariff';
import type { Context, State } from '../interview/state';
import type { Unfinished } from '../interview/unfinished';
import { homeFileName, nameOfFile } from '../store/home-file';
import { callName } from './call-name';
import { mayColor, whyLines } from './choose-face';
import { DONE, FAILED, INTERRUPTED, WRONG_USAGE } from './exit-codes';
import type { Outcome } from './finish-with-plan';
import type { Arguments } from './read-arguments';

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
}

/** `lampkeeper [interview] [FILE]`: ask, keep, and write the plan. */
export async function interviewCommand(args: Arguments): Promise<number> {
  const [given = null, ...more] = args.rest;
  if (more.length > 0) {
    process.stderr.write('interview takes one home file, or none.\n');
    return WRONG_USAGE;
  }
  let outcome = await sit(args, given);
  while (outcome.next) outcome = await sit(args, null);
  return outcome.code;
}

/** One home, from the first question to its plan or to where it was left. */
async function sit(args: Arguments, given: string | null): Promise<Outcome> {
  const asOf = args.asOf ?? today();
  const sitting: Sitting = { args, given, asOf, answers: {}, unfinished: {}, tariff: null };
  if (given !== null) {
    const failed = await takeUp(sitting, given);
    if (failed !== null) {
      process.stderr.write(`${failed}\n`);
      return { code: FAILED, next: false };
    }
  }
  if (args.tariff !== null) {
    const { tariffFromFile } = await import('./own-tariff');
    const own = await tariffFromFile(args.tariff);
    if (!own.ok) {
      process.stderr.write(`${own.says}\n`);
      return { code: FAILED, next: false };
    }
    sitting.tariff = own.tariff;
  }
  const context = contextOf(sitting);
  const start = begin(context, sitting.answers, sitting.unfinished);
  const state = await ask(sitting, context, start);
  return close(sitting, state);
}

/** Read the home begun before, or note the name of a new one. */
async function takeUp(sitting: Sitting, path: string): Promise<string | null> {
  const name = nameOfFile(path).toLowerCase();
  if (!existsSync(path)) {
    sitting.answers = { 'home-name': name };
    return null;
  }
  const { homeFromFile } = await import('./home-from-file');
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
    nameProblem: (name) => {
      const { given } = sitting;
      if (given !== null && name !== nameOfFile(given).toLowerCase()) {
        return `This home is named after its file, ${given}. Rename the file when you have stopped.`;
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

function isGiven(sitting: Sitting, name: string): boolean {
  if (sitting.given === null) return sitting.answers['home-name'] === name;
  return resolvePath(sitting.given) === resolvePath(homeFileName(name));
}

async function ask(sitting: Sitting, context: Context, start: State): Promise<State> {
  const { stdin, stdout, env } = process;
  const color = mayColor(env, sitting.args.color);
  const door = { context, start, later: later(sitting), color, stdin, stdout };
  if (whyScreenless(sitting) !== null) {
    const { runLines } = await import('../faces/lines/run-lines');
    return runLines(door);
  }
  if (!color) env.FORCE_COLOR = '0';
  const { runScreen } = await import('../faces/screen/run-screen');
  return runScreen(door);
}

/** What the first question does not need is loaded while it is being read. */
function later(sitting: Sitting): Promise<Later> {
  return new Promise((resolve, reject) => {
    setTimeout(() => {
      import('./later').then(
        ({ makeLater }) => resolve(makeLater(() => fileOf(sitting), sitting, interview)),
        reject,
      );
    }, 60);
  });
}

/** The file of this home: the one named at the start, else NAME.home.yaml in this folder. */
function fileOf(sitting: Sitting): string | null {
  if (sitting.given !== null) return sitting.given;
  const name = sitting.answers['home-name'];
  return typeof name === 'string' ? homeFileName(name) : null;
}

async function close(sitting: Sitting, state: State): Promise<Outcome> {
  sitting.answers = state.answers;
  const file = fileOf(sitting);
  const kept = file !== null && existsSync(file) ? file : null;
  const goOn =
    kept === null
      ? ''
      : `Your answers are in ${kept}.\nTo go on: ${callName(process.env)} ${kept}\n`;
  switch (state.ending) {
    case 'interrupted':
      process.stderr.write(kept === null ? 'Stopped. Nothing was kept yet.\n' : `Stopped. ${goOn}`);
      return ended(process.env.npm_lifecycle_event === 'start' ? DONE : INTERRUPTED);
    case 'danger':
      if (whyScreenless(sitting) === null) await repeatDanger(state);
      process.stderr.write(
        `Stopped, so that you can deal with it now. Come back when everyone is safe.\n${goOn}`,
      );
      return ended(DONE);
    case 'plan': {
      const { finishWithPlan } = await import('./finish-with-plan');
      return finishWithPlan({
        answers: state.answers,
        unfinished: state.unfinished,
        asOf: sitting.asOf,
        tariff: sitting.tariff,
        file,
        args: sitting.args,
      });
    }
    default:
      process.stderr.write(kept === null ? 'Stopped. Nothing was kept yet.\n' : goOn);
      return ended(DONE);
  }
}

function whyScreenless({ args }: Sitting): string | null {
  const { stdin, stdout, env } = process;
  return whyLines({ env, stdin, stdout, plain: args.plain });
}

/** The screen that said what to do is gone: it is printed once more. */
async function repeatDanger(state: State): Promise<void> {
  const { dangerWords } = await import('./danger-words');
  process.stderr.write(`${dangerWords(state, process.stderr.columns)}\n`);
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
