import interview from '#compiled/questions.js';
import { TARIFF_KEY } from '../bill/tariff/tariff-key';
import { privateIn } from '../interview/private-answers';
import { PLAN_KEY } from '../papers/plan-file/plan-file-version';
import { sayFault } from '../store/home-file';
import { QUOTE_KEY } from '../store/quote-key';
import { readYamlFile } from '../store/read-yaml-file';
import { type CheckedFile, checkedData } from './checked-file';
import { DONE, FAILED, WRONG_USAGE } from './exit-codes';
import { homeFromFile } from './home-from-file';
import { tariffFromFile } from './own-tariff';
import { printErr, printOut } from './print';
import { privateWords } from './private-words';
import type { Arguments } from './read-arguments';

/** `lampkeeper check FILE`: line, column and what to do for every fault, in a home, a tariff, a quote or a plan file. */
export async function checkCommand(args: Arguments): Promise<number> {
  const [path, ...more] = args.rest;
  if (path === undefined || more.length > 0) {
    printErr('check takes one file: lampkeeper check kim.home.yaml\n');
    return WRONG_USAGE;
  }
  if (args.dryRun && !args.private) {
    printErr('--dry-run goes with --private here: check alone writes nothing.\n');
    return WRONG_USAGE;
  }
  if (args.private) {
    const { privateCopy } = await import('./private-copy');
    return privateCopy(path, args.dryRun);
  }
  const checked = await checkFile(path);
  printOut(
    args.json ? `${JSON.stringify(checkedData(path, checked), null, 2)}\n` : `${checked.says}\n`,
  );
  return checked.ok ? DONE : FAILED;
}

/** A tariff, a quote and a plan are known by their first key; anything else is read as a home. */
async function checkFile(path: string): Promise<CheckedFile> {
  const file = readYamlFile(path);
  const data = file.ok && typeof file.data === 'object' ? (file.data ?? {}) : {};
  if (Object.hasOwn(data, TARIFF_KEY)) return checkTariff(path);
  if (Object.hasOwn(data, QUOTE_KEY)) return checkQuote(path);
  if (file.ok && Object.hasOwn(data, PLAN_KEY)) {
    const { checkPlan } = await import('./check-plan');
    return checkPlan(path, data, file.placeOf);
  }
  return checkHome(path);
}

async function checkTariff(path: string): Promise<CheckedFile> {
  const own = await tariffFromFile(path);
  if (!own.ok) return { kind: 'tariff', ...own };
  const says = `${path}: the tariff "${own.tariff.name}", nothing wrong.`;
  return { kind: 'tariff', ok: true, says, faults: [] };
}

/** Which circuits a home has is asked where the quote is laid beside its plan. */
async function checkQuote(path: string): Promise<CheckedFile> {
  const { readQuote } = await import('../store/read-quote');
  const read = readQuote(path);
  if (!read.ok) return { kind: 'quote', ...read };
  return { kind: 'quote', ok: true, says: `${path}: a quote, nothing wrong.`, faults: [] };
}

async function checkHome(path: string): Promise<CheckedFile> {
  const home = await homeFromFile(path, null);
  if (!home.ok) return { kind: 'home', ...home };
  const { answers, tariff, remarks } = home;
  const also = tariff === null ? '' : ` and the tariff "${tariff.name}"`;
  const count = Object.keys(answers).length;
  const said = `${path}: ${count} answers${also}, nothing wrong.`;
  const held = privateIn(interview, answers);
  const found = privateWords(interview, held, tariff !== null);
  const share =
    found.length === 0 ? [] : [`For a copy without them: lampkeeper check ${path} --private`];
  const told = remarks.map((one) => sayFault(path, one));
  return {
    kind: 'home',
    ok: true,
    says: [...told, said, ...found, ...share].join('\n'),
    faults: [],
    remarks,
    answers: count,
    private: held,
  };
}
