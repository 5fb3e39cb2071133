import interview from '#compiled/questions.js';
import type { Tariff } from '../bill/tariff/tariff';
import type { Answers } from '../interview/answers';
import { planMarkdown } from '../papers/household/to-markdown';
import { planData } from '../papers/plan-file/plan-data';
import { makePlan } from '../plan/make-plan';
import { nameOfFile, sayFault } from '../store/home-file';
import { keepTariff } from '../store/keep-tariff';
import { STANDARD_INPUT } from '../store/read-text';
import { type Paper, wouldWrite, writePapers } from '../store/write-papers';
import { wordsIn } from '../words/words-in';
import { changedSince } from './changed-since';
import { DONE, FAILED, WRONG_USAGE } from './exit-codes';
import { homeFromFile } from './home-from-file';
import { tariffFromFile } from './own-tariff';
import { planPapers } from './plan-papers';
import { printErr, printOut } from './print';
import { printSheet } from './print-sheet';
import { PLANNING, withProgress } from './progress';
import type { Arguments } from './read-arguments';

/** `lampkeeper plan HOME.yaml`: the same plan as the interview gives, from the answers file. */
export async function planCommand(args: Arguments): Promise<number> {
  const [path, ...more] = args.rest;
  if (path === undefined || more.length > 0) {
    printErr('plan takes one home file: lampkeeper plan kim.home.yaml\n');
    return WRONG_USAGE;
  }
  const wrong = wrongTogether(path, args);
  if (wrong !== null) {
    printErr(`${wrong}\n`);
    return WRONG_USAGE;
  }
  const home = await homeFromFile(path, args.asOf);
  if (!home.ok) {
    printErr(`${home.says}\n`);
    return args.asOf !== null && home.says.startsWith('--as-of') ? WRONG_USAGE : FAILED;
  }
  for (const remark of home.remarks) printErr(`${sayFault(path, remark)}\n`);
  const own = await ownTariff(path, home.tariff, args);
  if (!own.ok) {
    printErr(`${own.says}\n`);
    return FAILED;
  }
  const name = path === STANDARD_INPUT ? toldName(home.answers) : nameOfFile(path);
  const answers = { ...home.answers, 'home-name': name };
  const plan = withProgress(PLANNING, () =>
    makePlan(interview, answers, home.asOf, undefined, own.tariff),
  );
  const words = await wordsIn('en');
  if (args.sheet !== null) return printSheet(plan, args.sheet, words);
  if (args.out === null) {
    const text = args.json
      ? `${JSON.stringify(planData(plan, words), null, 2)}\n`
      : planMarkdown(plan, words);
    printOut(text);
    return DONE;
  }
  const since = await changedSince(args.out, name, plan, words);
  if (args.dryRun) {
    return sayWouldWrite(args.out, planPapers(plan, name, words), { force: args.force, since });
  }
  const written = writePapers(args.out, planPapers(plan, name, words), args.force);
  if (!written.ok) {
    printErr(`${written.says}\n`);
    return FAILED;
  }
  printErr(`${[...since, ...written.paths.map((p) => `Wrote ${p}`)].join('\n')}\n`);
  if (args.json) printOut(`${JSON.stringify(planData(plan, words), null, 2)}\n`);
  return DONE;
}

/** Why these cannot stand together; null when they can. */
function wrongTogether(
  path: string,
  { tariff, dryRun, out, sheet, json }: Arguments,
): string | null {
  if (path === STANDARD_INPUT && tariff !== null)
    return '--tariff keeps the tariff in the home file, and standard input is none.';
  if (sheet !== null && (out !== null || json))
    return '--sheet prints one sheet alone: it goes neither with --out nor with --json.';
  if (dryRun && out === null && tariff === null)
    return '--dry-run goes with --out or --tariff: plan alone writes nothing.';
  return null;
}

/** The name told in a home that has no file. */
function toldName(answers: Answers): string {
  const name = answers['home-name'];
  return typeof name === 'string' ? name : 'my-home';
}

function sayWouldWrite(
  folder: string,
  papers: readonly Paper[],
  { force, since }: { force: boolean; since: readonly string[] },
): number {
  const would = wouldWrite(folder, papers, force);
  if (!would.ok) {
    printErr(`${would.says}\n`);
    return FAILED;
  }
  const lines = [
    ...since,
    ...would.fresh.map((path) => `Would write ${path}`),
    ...would.replaced.map((path) => `Would replace ${path}`),
  ];
  printErr(`${lines.join('\n')}\n`);
  return DONE;
}

/**
 * The tariff of the home, or the one in a file, which is then kept in the home file: so the same home file goes on
 * giving the same plan.
 */
async function ownTariff(
  homePath: string,
  kept: Tariff | null,
  { tariff: tariffPath, dryRun }: Arguments,
): Promise<{ ok: true; tariff: Tariff | null } | { ok: false; says: string }> {
  if (tariffPath === null) return { ok: true, tariff: kept };
  const own = await tariffFromFile(tariffPath);
  if (!own.ok) return own;
  if (dryRun) {
    printErr(`Would keep the tariff "${own.tariff.name}" in ${homePath}.\n`);
    return own;
  }
  const failed = keepTariff(homePath, own.tariff);
  if (failed !== null) return { ok: false, says: failed };
  printErr(
    `The tariff "${own.tariff.name}" now stands in ${homePath}, under "tariff:". Take it out there to go back to your answers.\n`,
  );
  return own;
}
