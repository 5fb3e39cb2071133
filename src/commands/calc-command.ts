import type { Tariff } from '../bill/tariff/tariff';
import type { Calculation } from './calc/calculation';
import { gatherValues } from './calc/gather-values';
import { calculationData } from './calc/list-data';
import { type Pairs, readPairs } from './calc/read-pairs';
import { calculations } from './calc/registry';
import { sayHelp } from './calc/say-inputs';
import { sayWork, workData } from './calc/say-work';
import { DONE, FAILED, WRONG_USAGE } from './exit-codes';
import { printErr, printOut } from './print';
import type { Arguments } from './read-arguments';

/** `lampkeeper calc`: the list; `calc NAME`: its inputs; `calc NAME key=value ...`: its work. */
export async function calcCommand(args: Arguments): Promise<number> {
  const [name, ...words] = args.rest;
  if (name === undefined) return listAll(args);
  const load = Object.hasOwn(calculations, name) ? calculations[name] : undefined;
  if (load === undefined) {
    const names = Object.keys(calculations).join(', ');
    return wrong(`There is no computation "${name}". There are: ${names}.`);
  }
  const calculation = await load();
  const typed = readPairs(words);
  if (!typed.ok) return wrong(`${typed.says} Try: lampkeeper calc ${name}`);
  const pairs = args.inFile === null ? typed : await withFile(args.inFile, typed.pairs);
  if (!pairs.ok) return failed(pairs.says);
  if (args.tariff !== null) return withTariff(calculation, pairs.pairs, args, args.tariff);
  if (pairs.pairs.size === 0) {
    print(args.json ? json(calculationData(calculation)) : `${sayHelp(calculation)}\n`);
    return DONE;
  }
  return work(calculation, pairs.pairs, args);
}

async function listAll({ json: asData, inFile, tariff }: Arguments): Promise<number> {
  if (tariff !== null) return wrong('--tariff needs the name of a computation before it.');
  if (inFile !== null) return wrong('--in needs the name of a computation before it.');
  const all = await Promise.all(Object.values(calculations).map((load) => load()));
  print(asData ? json(all.map(calculationData)) : `${all.map(sayHelp).join('\n\n')}\n`);
  return DONE;
}

/** The file first, then what was typed, which wins. YAML is loaded only here. */
async function withFile(path: string, typed: ReadonlyMap<string, string>): Promise<Pairs> {
  const { readPairsFile } = await import('./calc/read-pairs-file');
  const filed = readPairsFile(path);
  return filed.ok ? { ok: true, pairs: new Map([...filed.pairs, ...typed]) } : filed;
}

/** The same with the household's own tariff, which stands for tariff=own. */
async function withTariff(
  calculation: Calculation,
  pairs: ReadonlyMap<string, string>,
  args: Arguments,
  path: string,
): Promise<number> {
  if (calculation.inputs.every(({ key }) => key !== 'tariff')) {
    return wrong(
      `${calculation.name} takes no tariff. --tariff belongs to bill, dispatch and reserve.`,
    );
  }
  const { tariffFromFile } = await import('./own-tariff');
  const own = await tariffFromFile(path);
  if (!own.ok) return failed(own.says);
  const { OWN_TARIFF } = await import('./calc/tariff-input');
  return work(calculation, new Map([['tariff', OWN_TARIFF], ...pairs]), args, own.tariff);
}

function work(
  calculation: Calculation,
  pairs: ReadonlyMap<string, string>,
  args: Arguments,
  ownTariff: Tariff | null = null,
): number {
  const gathered = gatherValues(calculation, pairs, ownTariff);
  if (!gathered.ok) return wrong(`${gathered.says} Try: lampkeeper calc ${calculation.name}`);
  const outcome = calculation.run(gathered.values);
  if (!outcome.ok) {
    return failed(`No result: ${outcome.says}`);
  }
  const { understood } = gathered;
  print(
    args.json
      ? json(workData(calculation, understood, outcome))
      : sayWork(calculation, understood, outcome),
  );
  return DONE;
}

function wrong(says: string): number {
  printErr(`${says}\n`);
  return WRONG_USAGE;
}

function failed(says: string): number {
  printErr(`${says}\n`);
  return FAILED;
}

const print = (text: string) => printOut(text);
const json = (data: object) => `${JSON.stringify(data, null, 2)}\n`;
