import { existsSync } from 'node:fs';
import { dirname } from 'node:path';
import interview from '#compiled/questions.js';
import type { Tariff } from '../bill/tariff';
import type { Answers } from '../interview/answers';
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

interface Finished {
  readonly answers: Answers;
  readonly asOf: string;
  readonly tariff: Tariff | null;
  readonly file: string | null;
  readonly args: Arguments;
}

/** Write the papers, show the summary, and say where everything is. */
export async function finishWithPlan(finished: Finished): Promise<number> {
  const { answers, asOf, tariff, file, args } = finished;
  const home = file ?? homeFileName('my-home');
  const name = nameOfFile(home);
  const unsaved = saveHome(home, interview, answers, asOf, tariff);
  const named = { ...answers, 'home-name': name };
  const plan = makePlan(interview, named, asOf, undefined, tariff);
  const markdown = planMarkdown(plan);
  const written = writeBeside(dirname(home), name, plan, args.force);
  await show(markdown, args);
  if (unsaved !== null) process.stderr.write(`${unsaved}\n`);
  if (!written.ok) {
    process.stderr.write(`${written.says}\nThe plan is printed here instead:\n`);
    process.stdout.write(markdown);
    return FAILED;
  }
  const call = callName(process.env);
  const names = [home, ...written.paths].filter((path) => existsSync(path));
  process.stderr.write(`Your papers:\n${names.map((path) => `  ${path}\n`).join('')}`);
  process.stderr.write(
    `To make the plan again: ${call} plan ${home}\nTo change an answer: ${call} ${home}\n`,
  );
  return unsaved === null ? DONE : FAILED;
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

async function show(markdown: string, args: Arguments): Promise<void> {
  const { stdin, stdout, env } = process;
  if (whyLines({ env, stdin, stdout, plain: args.plain }) !== null) {
    process.stdout.write(markdown);
    return;
  }
  const { readPlan } = await import('../faces/screen/read-plan');
  await readPlan({ markdown, stdin, stdout, color: mayColor(env, args.color) });
}
