import type { Block } from '../../../src/papers/document/block';
import { sheetsOf } from '../../../src/papers/sheets/sheets-of';
import { english } from '../../../src/words/en';
import type { Held } from '../seen';

/** From 10,000 W a figure is printed as kW in three digits, and in a table of watts as it is. */
const ROUNDING = 0.006;

/** A power as it stands in a text, W or VA. */
interface Power {
  readonly unit: string;
  readonly value: number;
}

/** Every power in a text: "2,036 VA (1,192 to 3,340 VA)" is three. */
export function powersIn(text: string): Power[] {
  const each = text.replace(/([\d.,]+) to ([\d.,]+) (k?(?:W|VA))\b/g, '$1 $3, $2 $3');
  return [...each.matchAll(/(?<![\w.,])(\d[\d,]*(?:\.\d+)?) (k?)(W|VA)\b/g)].map(
    ([, digits, kilo, unit]) => ({
      unit: unit!,
      value: Number(digits!.replaceAll(',', '')) * (kilo === 'k' ? 1000 : 1),
    }),
  );
}

/** A cell of bare numbers under a head that holds their unit. */
const cellPowers = (cell: string, unit: string) =>
  (cell.match(/\d[\d,]*(?:\.\d+)?/g) ?? []).map((digits) => ({
    unit,
    value: Number(digits.replaceAll(',', '')),
  }));

const same = (one: Power, other: Power) =>
  one.unit === other.unit && Math.abs(one.value - other.value) <= ROUNDING * other.value;

/** Powers of `sheet` that no power of `file` is. */
export const missingPowers = (sheet: readonly Power[], file: readonly Power[]): string[] =>
  sheet
    .filter((one) => !file.some((other) => same(one, other)))
    .map(({ unit, value }) => `${value} ${unit}`);

type Table = Extract<Block, { kind: 'table' }>;

/** Each W and VA of the sheet to quote from stands in the plan file, and those of a circuit beside its name there. */
export const quoteAsPlanFile: Held = ({ plan, data, file }) => {
  const sheet = sheetsOf(plan, english).find(({ id }) => id === 'quote');
  if (sheet === undefined) return [];
  const table = sheet.blocks.find((block): block is Table => block.kind === 'table');
  const { circuits } = data.electrical.scope;
  const rows = table?.rows ?? [];
  const wrong = rows.flatMap((cells, i) => {
    const powers = [...cellPowers(cells[2]!, 'W'), ...cellPowers(cells[3]!, 'VA')];
    const theirs = powersIn(`${circuits[i]?.watts}; ${circuits[i]?.startVa}`);
    return missingPowers(powers, theirs).map((power) => `${cells[0]}: ${power} is not its own`);
  });
  const said = sheet.blocks.flatMap((block) =>
    'items' in block ? block.items : 'text' in block ? [block.text] : [],
  );
  const inFile = powersIn(file.replace(/\s+/g, ' '));
  return [
    ...(table !== undefined && rows.length !== circuits.length
      ? ['another number of circuits']
      : []),
    ...wrong,
    ...missingPowers(powersIn(said.join(' ')), inFile).map(
      (power) => `${power} is not in the plan file`,
    ),
  ];
};
