import interview from '#compiled/questions.js';
import { makePlan } from '../plan/make-plan';
import { planData } from '../plan/plan-data';
import { planMarkdown } from '../plan/to-markdown';
import { nameOfFile } from '../store/home-file';
import { writePapers } from '../store/write-papers';
import { DONE, FAILED, WRONG_USAGE } from './exit-codes';
import { homeFromFile } from './home-from-file';
import { planPapers } from './plan-papers';
import type { Arguments } from './read-arguments';

/** `lampkeeper plan HOME.yaml`: the same plan as the interview gives, from the answers file. */
export function planCommand(args: Arguments): number {
  const [path, ...more] = args.rest;
  if (path === undefined || more.length > 0) {
    process.stderr.write('plan takes one home file: lampkeeper plan kim.home.yaml\n');
    return WRONG_USAGE;
  }
  const home = homeFromFile(path, args.asOf);
  if (!home.ok) {
    process.stderr.write(`${home.says}\n`);
    return args.asOf !== null && home.says.startsWith('--as-of') ? WRONG_USAGE : FAILED;
  }
  const name = nameOfFile(path);
  const plan = makePlan(interview, { ...home.answers, 'home-name': name }, home.asOf);
  if (args.out === null) {
    const text = args.json ? `${JSON.stringify(planData(plan), null, 2)}\n` : planMarkdown(plan);
    process.stdout.write(text);
    return DONE;
  }
  const written = writePapers(args.out, planPapers(plan, name), args.force);
  if (!written.ok) {
    process.stderr.write(`${written.says}\n`);
    return FAILED;
  }
  process.stderr.write(`${written.paths.map((p) => `Wrote ${p}`).join('\n')}\n`);
  if (args.json) process.stdout.write(`${JSON.stringify(planData(plan), null, 2)}\n`);
  return DONE;
}
