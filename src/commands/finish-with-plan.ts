import { existsSync } from 'node:fs';
import { dirname } from 'node:path';
import interview from '#compiled/questions.js';
import type { Tariff } from '../bill/tariff';
import type { Answers } from '../interview/answers';
import type { Unfinished } from '../interview/unfinished';
import { makePlan } from '../plan/make-plan';
import { planMarkdown } from '../plan/to-markdown';
import { homeFileName, nameOfFile } from '../store/home-file';
import { saveHome } from '../store/write-home';
import { writePapers } from '../store/write-papers';
import { callName } from './call-name';
import { mayColor, whyLines } from './choose-face';
import { DONE, FAILED } from './exit-codes';
import { planPapers } from './plan-papers';
import type { Arguments } from './read-arguments';

/** How it went, and whether another home is to follow. */
export interface Outcome {
  readonly code: number;
  readonly next: boolean;
}

interface Finished {
  readonly answers: Answers;
  readonly unfinished: Unfinished;
  readonly asOf: string;
  readonly tariff: Tariff | null;
  readonly file: string | null;
  readonly args: Arguments;
}

/** Write the papers, show the summary, and say where everything is. */
export async function finishWithPlan(finished: Finished): Promise<Outcome> {
  const { answers, asOf, tariff, file, args } = finished;
  const home = file ?? homeFileName('my-home');
  const name = nameOfFile(home);
  const unsaved = saveHome(home, interview, finished);
  const named = { ...answers, 'home-name': name };
  const plan = makePlan(interview, named, asOf, undefined, tariff);
  const markdown = planMarkdown(plan);
  const written = writeBeside(dirname(home), name, plan, args.force);
  const next = await show(markdown, args);
  if (unsaved !== null) process.stderr.write(`${unsaved}\n`);
  if (!written.ok) {
    process.stderr.write(`${written.says}\nThe plan is printed here instead:\n`);
    process.stdout.write(markdown);
    return { code: FAILED, next };
  }
  const call = callName(process.env);
  const names = [home, ...written.paths].filter((path) => existsSync(path));
  process.stderr.write(`Your papers:\n${names.map((path) => `  ${path}\n`).join('')}`);
  process.stderr.write(
    `To make the plan again: ${call} plan ${home}\nTo change an answer: ${call} ${home}\nFor another home: ${call}\n`,
  );
  return { code: unsaved === null ? DONE : FAILED, next };
}

/** Never over a file that is not ours as we wrote it: then the plan takes the next free name. */
function writeBeside(
  folder: string,
  name: string,
  plan: ReturnType<typeof makePlan>,
  force: boolean,
) {
  const names = [name, ...Array.from({ length: 20 }, (_, i) => `${name}-${i + 2}`)];
  let last = writePapers(folder, planPapers(plan, name), force);
  for (const next of names.slice(1)) {
    if (last.ok || !existsSync(`${folder}/${name}.plan.yaml`)) break;
    last = writePapers(folder, planPapers(plan, next), false);
  }
  return last;
}

/** True when the reader wants to begin another home right away. */
async function show(markdown: string, args: Arguments): Promise<boolean> {
  const { stdin, stdout, env } = process;
  if (whyLines({ env, stdin, stdout, plain: args.plain }) !== null) {
    process.stdout.write(markdown);
    return false;
  }
  const { readPlan } = await import('../faces/screen/read-plan');
  const left = await readPlan({ markdown, stdin, stdout, color: mayColor(env, args.color) });
  return left === 'next';
}
