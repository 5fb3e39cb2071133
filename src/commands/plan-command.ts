import interview from '#compiled/questions.js';
import type { Tariff } from '../bill/tariff/tariff';
import { planMarkdown } from '../papers/household/to-markdown';
import { planData } from '../papers/plan-file/plan-data';
import { makePlan } from '../plan/make-plan';
import { nameOfFile } from '../store/home-file';
import { keepTariff } from '../store/keep-tariff';
import { writePapers } from '../store/write-papers';
import { wordsIn } from '../words/words-in';
import { DONE, FAILED, WRONG_USAGE } from './exit-codes';
import { homeFromFile } from './home-from-file';
import { tariffFromFile } from './own-tariff';
import { planPapers } from './plan-papers';
import { printErr, printOut } from './print';
import type { Arguments } from './read-arguments';

/** `lampkeeper plan HOME.yaml`: the same plan as the interview gives, from the answers file. */
export async function planCommand(args: Arguments): Promise<number> {
  const [path, ...more] = args.rest;
  if (path === undefined || more.length > 0) {
    printErr('plan takes one home file: lampkeeper plan kim.home.yaml\n');
    return WRONG_USAGE;
  }
  const home = await homeFromFile(path, args.asOf);
  if (!home.ok) {
    printErr(`${home.says}\n`);
    return args.asOf !== null && home.says.startsWith('--as-of') ? WRONG_USAGE : FAILED;
  }
  for (const remark of home.remarks) printErr(`${remark}\n`);
  const own = await ownTariff(path, home.tariff, args.tariff);
  if (!own.ok) {
    printErr(`${own.says}\n`);
    return FAILED;
  }
  const name = nameOfFile(path);
  const answers = { ...home.answers, 'home-name': name };
  const plan = makePlan(interview, answers, home.asOf, undefined, own.tariff);
  const words = await wordsIn('en');
  if (args.out === null) {
    const text = args.json
      ? `${JSON.stringify(planData(plan, words), null, 2)}\n`
      : planMarkdown(plan, words);
    printOut(text);
    return DONE;
  }
  const written = writePapers(args.out, planPapers(plan, name, words), args.force);
  if (!written.ok) {
    printErr(`${written.says}\n`);
    return FAILED;
  }
  printErr(`${written.paths.map((p) => `Wrote ${p}`).join('\n')}\n`);
  if (args.json) printOut(`${JSON.stringify(planData(plan, words), null, 2)}\n`);
  return DONE;
}

/**
 * The tariff of the home, or the one in a file, which is then kept in the home file: so the same home file goes on
 * giving the same plan.
 */
async function ownTariff(
  homePath: string,
  kept: Tariff | null,
  tariffPath: string | null,
): Promise<{ ok: true; tariff: Tariff | null } | { ok: false; says: string }> {
  if (tariffPath === null) return { ok: true, tariff: kept };
  const own = await tariffFromFile(tariffPath);
  if (!own.ok) return own;
  const failed = keepTariff(homePath, own.tariff);
  if (failed !== null) return { ok: false, says: failed };
  printErr(
    `The tariff "${own.tariff.name}" now stands in ${homePath}, under "tariff:". Take it out there to go back to your answers.\n`,
  );
  return own;
}
