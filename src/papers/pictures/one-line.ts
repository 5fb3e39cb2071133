import type { Signs } from './blocks';
import type { Mark } from './drawing';
import { folded } from './folded';
import { box, line, text } from './marks';
import type { Picture } from './picture';

/** A box of the diagram: what it is, and what is known of it. */
export interface Device {
  readonly name: string;
  /** "200 A, as told", "10 kW, to be quoted"; empty where nothing is known. */
  readonly known: string;
  /** Already there; what is new is drawn with a thick edge. */
  readonly there: boolean;
}

/** The way power takes from the street to the loads, and what joins it where. */
export interface OneLine {
  /** From the street down to the circuits. */
  readonly spine: readonly Device[];
  /** Chains that join the spine at a device, the nearest first. */
  readonly joins: readonly { readonly at: number; readonly chain: readonly Device[] }[];
}

export interface OneLineWords {
  readonly title: string;
  readonly description: string;
  readonly isNew: string;
  readonly head: readonly string[];
}

const BOX = { width: 200, height: 54, down: 84, right: 236 };
const TOP = 40;

/** A one-line diagram from a fixed set of boxes; a drawing for talking it over, not a design. */
export function oneLinePicture(diagram: OneLine, words: OneLineWords): Picture {
  const longest = Math.max(0, ...diagram.joins.map(({ chain }) => chain.length));
  return {
    drawing: {
      id: 'one-line',
      width: 20 + BOX.width + longest * BOX.right + 20,
      height: TOP + diagram.spine.length * BOX.down + 10,
      title: words.title,
      description: words.description,
      marks: drawn(diagram, words),
    },
    inTerminal: (width, signs) => inTerminal(diagram, words, { width, signs }),
    table: { head: words.head, rows: rowsOf(diagram) },
  };
}

function drawn({ spine, joins }: OneLine, words: OneLineWords): Mark[] {
  const y = (row: number) => TOP + row * BOX.down;
  const x = (column: number) => 20 + column * BOX.right;
  const middle = BOX.height / 2;
  return [
    box([20, 8, 24, 16], 'none', 'thick'),
    text(52, 21, words.isNew),
    ...spine.flatMap((device, row) => [
      ...boxOf(device, x(0), y(row)),
      ...(row === 0
        ? []
        : [
            line(
              [
                [x(0) + BOX.width / 2, y(row - 1) + BOX.height],
                [x(0) + BOX.width / 2, y(row)],
              ],
              'plain',
            ),
          ]),
    ]),
    ...joins.flatMap(({ at, chain }) =>
      chain.flatMap((device, i) => [
        ...boxOf(device, x(i + 1), y(at)),
        line(
          [
            [x(i) + BOX.width, y(at) + middle],
            [x(i + 1), y(at) + middle],
          ],
          'plain',
        ),
      ]),
    ),
  ];
}

function boxOf(device: Device, x: number, y: number): Mark[] {
  const name = folded(device.name, 27).slice(0, 2);
  const known = folded(device.known, 33)[0] ?? '';
  const lines = [
    ...name.map((said) => ({ said, bold: true })),
    ...(known === '' ? [] : [{ said: known, bold: false }]),
  ];
  const first = y + BOX.height / 2 + 4 - ((lines.length - 1) * 15) / 2;
  return [
    box([x, y, BOX.width, BOX.height], 'none', device.there ? 'thin' : 'thick'),
    ...lines.map(({ said, bold }, i) =>
      text(x + BOX.width / 2, first + i * 15, said, {
        anchor: 'middle',
        bold,
        size: bold ? 13 : 11,
      }),
    ),
  ];
}

function inTerminal(
  { spine, joins }: OneLine,
  words: OneLineWords,
  { width, signs }: { width: number; signs: Signs },
): string[] {
  const down = signs === 'ascii' ? '|' : '│';
  const across = signs === 'ascii' ? '--' : '──';
  const says = (device: Device) =>
    `${device.name}${device.there ? '' : ' *'}${device.known === '' ? '' : `, ${device.known}`}`;
  return [
    words.title.slice(0, width),
    ...spine.flatMap((device, row) => [
      ...(row === 0 ? [] : [`  ${down}`]),
      ...folded(says(device), width).map((said, i) =>
        i === 0 ? said : `  ${said}`.slice(0, width),
      ),
      ...joins
        .filter(({ at }) => at === row)
        .flatMap(({ chain }) =>
          folded(chain.map(says).join(` ${across} `), width - 6).map((said, i) =>
            i === 0 ? `  ${down}${across} ${said}` : `  ${down}   ${said}`,
          ),
        ),
    ]),
    `* ${words.isNew}`,
  ];
}

function rowsOf({ spine, joins }: OneLine): string[][] {
  const pairs = [
    ...spine.slice(1).map((device, i) => [spine[i]!, device] as const),
    ...joins.flatMap(({ at, chain }) =>
      chain.map((device, i) => [device, i === 0 ? spine[at]! : chain[i - 1]!] as const),
    ),
  ];
  return pairs.map(([from, to]) => [from.name, to.name, from.known]);
}
