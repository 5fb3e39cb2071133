import { existsSync } from 'node:fs';
import { dirname } from 'node:path';
import interview from '#compiled/questions.js';
import type { Tariff } from '../../bill/tariff/tariff';
import { glyphsFor } from '../../faces/screen/glyphs';
import type { ExplainedFigure } from '../../faces/screen/plan/explain-view';
import type { Left } from '../../faces/screen/plan/plan-keys';
import type { Asked, Beside } from '../../faces/screen/plan/read-plan';
import { sameAnswers } from '../../interview/after-plan';
import type { Answers } from '../../interview/answers';
import { besideTariff } from '../../interview/beside-tariff';
import type { Hide } from '../../interview/hide-words';
import type { AskAgain } from '../../interview/what-if/what-if-state';
import { planMarkdown } from '../../papers/household/to-markdown';
import { otherRoute } from '../../plan/changes/other-route';
import { makePlan } from '../../plan/make-plan';
import { visible } from '../../quantity/visible';
import { homeFileName, nameOfFile } from '../../store/home-file';
import { type Written, writePapers } from '../../store/write-papers';
import type { Words } from '../../words/words';
import { wordsIn } from '../../words/words-in';
import { callName } from '../call-name';
import { changeCall } from '../change-call';
import { changedSince } from '../changed-since';
import { DONE, FAILED } from '../exit-codes';
import { planPapers } from '../plan-papers';
import { printErr, printOut } from '../print';
import { PLANNING, withProgress } from '../progress';
import type { Arguments } from '../read-arguments';
import { sayMissing } from '../say-settled';
import { whyLines } from './choose-face';
import { explainedFigures } from './explained-figures';
import type { Keeping, Settled } from './keeping';

/** How it went, and whether the homes of this folder are to follow. */
export interface Outcome {
  readonly code: number;
  readonly next: boolean;
  /** Questions to answer again, then the plan once more; none named: off the list of answers. */
  readonly again?: AskAgain;
}

interface Finished {
  readonly answers: Answers;
  readonly asOf: string;
  readonly tariff: Tariff | null;
  readonly args: Arguments;
  /** Why nothing may be written, or null. */
  readonly looking: string | null;
  readonly keeping: Keeping;
  readonly settled: Settled;
  /** The plan written last in this sitting. */
  readonly written: WrittenPlan | null;
}

/** A plan as it was made and written of some answers. */
export interface WrittenPlan {
  readonly of: Answers;
  readonly markdown: string;
  /** Its figures, each with how it was worked out. */
  readonly figures: readonly ExplainedFigure[];
  /** What changed since the plan that stood there before. */
  readonly since: readonly string[];
  readonly written: Written;
}

/**
 * Write the papers, show the summary, and say where everything is. Of answers that are those of the plan written last
 * nothing is made anew.
 */
export async function finishWithPlan(
  finished: Finished,
  keepWritten: (now: WrittenPlan) => void,
): Promise<Outcome> {
  const { args, keeping, settled } = finished;
  const home = settled.file ?? homeFileName('my-home');
  const name = nameOfFile(home);
  const now = await planOnce(finished, home);
  keepWritten(now);
  const { markdown, since, written } = now;
  const left = await show(now, name, finished);
  if (typeof left === 'object') return { code: DONE, next: false, again: left };
  const next = left === 'homes';
  const missing = await sayMissing(keeping, settled, args);
  if (!written.ok) {
    const hide = await hideOn(args, name);
    const { mayPrint } = await import('./shared-screen');
    if (await mayPrint(args, hide(written.says))) {
      printErr(`${written.says}\nThe plan is printed here instead:\n`);
      printOut(markdown);
    }
    return { code: FAILED, next };
  }
  if (args.sharedScreen) {
    // Others see the screen, and the papers are named after the home.
    printErr('Your papers are in the folder of the home.\n');
    return { code: missing ? FAILED : DONE, next };
  }
  const call = callName(process.env);
  const names = [home, ...written.paths].filter((path) => existsSync(path));
  if (since.length > 0) printErr(`${since.join('\n')}\n\n`);
  printErr(`Your papers:\n${names.map((path) => `  ${path}\n`).join('')}`);
  printErr(
    `To make the plan again: ${call} plan ${home}\nTo see how a figure was worked out: ${call} explain ${home}\nTo change an answer: ${changeCall(call, args.short, home)}\nFor another home: ${call}\n`,
  );
  return { code: missing ? FAILED : DONE, next };
}

async function planOnce(finished: Finished, home: string): Promise<WrittenPlan> {
  const { answers, asOf, tariff, args, looking, written: last } = finished;
  if (last !== null && sameAnswers(last.of, answers)) return last;
  const name = nameOfFile(home);
  const named = { ...answers, 'home-name': name };
  const plan = withProgress(PLANNING, () => makePlan(interview, named, asOf, undefined, tariff));
  const words = await wordsIn('en');
  const other = otherRoute(besideTariff(interview, tariff !== null), named, plan);
  const note = other === null ? null : words.otherRoute(other);
  const markdown = visible(withNote(planMarkdown(plan, words), note));
  const made = { of: answers, markdown, figures: explainedFigures(plan, words) };
  if (looking !== null) {
    return { ...made, since: [], written: { ok: false, says: looking } };
  }
  const since = await changedSince(dirname(home), name, plan, words);
  const written = writeBeside(dirname(home), { name, words, plan }, args.force);
  return { ...made, since, written };
}

/** Said on the screen alone, below the title: the papers know nothing of the talk. */
function withNote(markdown: string, note: string | null): string {
  if (note === null) return markdown;
  const [title = '', ...rest] = markdown.split('\n');
  return [title, '', `**${note}**`, ...rest].join('\n');
}

/** Never over a file that is not ours as we wrote it: then the plan takes the next free name. */
function writeBeside(
  folder: string,
  { name, words, plan }: { name: string; words: Words; plan: ReturnType<typeof makePlan> },
  force: boolean,
) {
  const names = [name, ...Array.from({ length: 20 }, (_, i) => `${name}-${i + 2}`)];
  let last = writePapers(folder, planPapers(plan, name, words), force);
  for (const next of names.slice(1)) {
    if (last.ok || !existsSync(`${folder}/${name}.plan.yaml`)) break;
    last = writePapers(folder, planPapers(plan, next, words), false);
  }
  return last;
}

/** The plan on the screen, with what if over it; line by line it is printed. How the reader left it. */
async function show(
  { markdown, figures }: WrittenPlan,
  name: string,
  { args, answers, asOf, tariff }: Finished,
): Promise<Left | Asked> {
  const { stdin, stdout, env } = process;
  const asked = besideTariff(interview, tariff !== null);
  if (whyLines({ env, stdin, stdout, plain: args.plain }) !== null) {
    // A script knows what it asks for, and has an end.
    if (!stdin.isTTY || !stdout.isTTY) {
      printOut(markdown);
      return 'done';
    }
    const [{ readPlanByLine }, { afterPlan }, { whatIfInOne }] = await Promise.all([
      import('../../faces/lines/read-plan'),
      import('../../faces/lines/after-plan'),
      import('./later'),
    ]);
    const whatIf = whatIfInOne(tariff, asOf);
    const beside = afterPlan({ interview: asked, answers, whatIf });
    return (await readPlanByLine({ markdown, stdin, stdout, beside })) ?? 'done';
  }
  const [{ readPlan }, { explainKey }, { whatIfKey }, { whatIfApart }] = await Promise.all([
    import('../../faces/screen/plan/read-plan'),
    import('../../faces/screen/plan/explain-view'),
    import('../../faces/screen/plan/what-if-view'),
    import('./what-if-apart'),
  ]);
  const hide = args.sharedScreen ? { hide: await hideOn(args, name) } : {};
  const apart = whatIfApart(tariff, asOf);
  const beside = [
    whatIfKey({ name, interview: asked, answers, apart, stdout }),
    CHANGE,
    ...(figures.length > 0 ? [explainKey(figures, glyphsFor(env))] : []),
  ];
  try {
    return await readPlan({ name, markdown, stdin, stdout, beside, ...hide });
  } finally {
    apart.close();
  }
}

const CHANGE: Beside = { letter: 'c', says: 'change an answer', open: () => ({ ask: [] }) };

/** What leaves out what is private where others see the screen. */
async function hideOn(args: Arguments, name: string): Promise<Hide> {
  const { hideFor } = await import('./shared-screen');
  return hideFor(args, [name]) ?? ((text) => text);
}
