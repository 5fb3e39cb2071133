import interview from '#compiled/questions.js';
import { TARIFF_KEY } from '../bill/tariff/tariff-key';
import { privateIn } from '../interview/private-answers';
import { PLAN_KEY } from '../papers/plan-file/plan-file-version';
import { readYamlFile } from '../store/read-yaml-file';
import { DONE, FAILED, WRONG_USAGE } from './exit-codes';
import { homeFromFile } from './home-from-file';
import { tariffFromFile } from './own-tariff';
import { printErr, printOut } from './print';
import { privateWords } from './private-words';
import type { Arguments } from './read-arguments';

/** `lampkeeper check FILE`: line, column and what to do for every fault, in a home, a tariff or a plan file. */
export async function checkCommand(args: Arguments): Promise<number> {
  const [path, ...more] = args.rest;
  if (path === undefined || more.length > 0) {
    printErr('check takes one file: lampkeeper check kim.home.yaml\n');
    return WRONG_USAGE;
  }
  if (args.private) {
    const { privateCopy } = await import('./private-copy');
    return privateCopy(path);
  }
  const checked = await checkFile(path);
  printOut(`${checked.says}\n`);
  return checked.ok ? DONE : FAILED;
}

/** A tariff and a plan are known by their first key; anything else is read as a home. */
async function checkFile(path: string): Promise<{ ok: boolean; says: string }> {
  const file = readYamlFile(path);
  const data = file.ok && typeof file.data === 'object' ? (file.data ?? {}) : {};
  if (Object.hasOwn(data, TARIFF_KEY)) return checkTariff(path);
  if (file.ok && Object.hasOwn(data, PLAN_KEY)) {
    const { checkPlan } = await import('./check-plan');
    return checkPlan(path, data, file.placeOf);
  }
  return checkHome(path);
}

async function checkTariff(path: string): Promise<{ ok: boolean; says: string }> {
  const own = await tariffFromFile(path);
  if (!own.ok) return own;
  return { ok: true, says: `${path}: the tariff "${own.tariff.name}", nothing wrong.` };
}

async function checkHome(path: string): Promise<{ ok: boolean; says: string }> {
  const home = await homeFromFile(path, null);
  if (!home.ok) return home;
  const tariff = home.tariff === null ? '' : ` and the tariff "${home.tariff.name}"`;
  const count = Object.keys(home.answers).length;
  const said = `${path}: ${count} answers${tariff}, nothing wrong.`;
  const found = privateWords(interview, privateIn(interview, home.answers), home.tariff !== null);
  const share =
    found.length === 0 ? [] : [`For a copy without them: lampkeeper check ${path} --private`];
  return { ok: true, says: [...home.remarks, said, ...found, ...share].join('\n') };
}
