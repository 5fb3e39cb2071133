import type { Signs } from './blocks';
import type { Mark } from './drawing';
import { folded } from './folded';
import { box, line, text } from './marks';
import type { Picture } from './picture';

/** A box of the diagram: what it is, and what is known of it. */
export interface Device {
  readonly name: string;
  /** "200 A, as told", "10 kW, planning size"; empty where nothing is known. */
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

const BOX = { width: 164, height: 62, down: 92, right: 190 };
const TOP = 34;

/** A one-line diagram from a fixed set of boxes; a drawing for talking it over, not a design. */
export function oneLinePicture(diagram: OneLine, words: OneLineWords): Picture {
  const columns = Math.max(
    diagram.spine.length,
    ...diagram.joins.map(({ at, chain }) => at + chain.length),
  );
  const rows = diagram.joins.length > 0 ? 1 : 0;
  return {
    drawing: {
      id: 'one-line',
      width: 10 + (columns - 1) * BOX.right + BOX.width + 10,
      height: TOP + rows * BOX.down + BOX.height + 8,
      title: words.title,
      description: words.description,
      marks: drawn(diagram, words),
    },
    inTerminal: (width, signs) => inTerminal(diagram, words, { width, signs }),
    table: { head: words.head, rows: rowsOf(diagram, words.isNew) },
  };
}

/** From the street to the circuits across; what joins hangs below the device it joins, its chain going on across. */
function drawn({ spine, joins }: OneLine, words: OneLineWords): Mark[] {
  const x = (column: number) => 10 + column * BOX.right;
  const middle = BOX.height / 2;
  const across = (column: number, y: number) =>
    line(
      [
        [x(column - 1) + BOX.width, y + middle],
        [x(column), y + middle],
      ],
      'plain',
    );
  const below = TOP + BOX.down;
  return [
    ...(hasNew({ spine, joins })
      ? [box([10, 8, 24, 16], 'none', 'thick'), text(42, 21, words.isNew)]
      : []),
    ...spine.flatMap((device, column) => [
      ...boxOf(device, x(column), TOP),
      ...(column === 0 ? [] : [across(column, TOP)]),
    ]),
    ...joins.flatMap(({ at, chain }) => [
      line(
        [
          [x(at) + BOX.width / 2, TOP + BOX.height],
          [x(at) + BOX.width / 2, below],
        ],
        'plain',
      ),
      ...chain.flatMap((device, i) => [
        ...boxOf(device, x(at + i), below),
        ...(i === 0 ? [] : [across(at + i, below)]),
      ]),
    ]),
  ];
}

/** Where all is there already, no key says what is new. */
const hasNew = ({ spine, joins }: OneLine) =>
  [...spine, ...joins.flatMap(({ chain }) => chain)].some(({ there }) => !there);

function boxOf(device: Device, x: number, y: number): Mark[] {
  const name = folded(device.name, 21).slice(0, 2);
  const known = folded(device.known, 27)[0] ?? '';
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
  // What others join starts a line of its own, so that they hang below it.
  const starts = [0, ...new Set(joins.map(({ at }) => at).filter((at) => at > 0))].sort(
    (a, b) => a - b,
  );
  const chained = (devices: readonly Device[], first: string, next: string) =>
    folded(devices.map(says).join(` ${across} `), width - Math.max(first.length, next.length)).map(
      (said, i) => (i === 0 ? first : next) + said,
    );
  const key = hasNew({ spine, joins }) ? ` (* ${words.isNew})` : '';
  return [
    `${words.title}${key}`.slice(0, width),
    ...starts.flatMap((start, row) => [
      ...(row === 0 ? [] : [`  ${down}`]),
      ...chained(spine.slice(start, starts[row + 1]), '', '    '),
      ...joins
        .filter(({ at }) => at === start)
        .flatMap(({ chain }) => chained(chain, `  ${down}${across} `, '      ')),
    ]),
  ];
}

function rowsOf({ spine, joins }: OneLine, isNew: string): string[][] {
  const pairs = [
    ...spine.slice(1).map((device, i) => [spine[i]!, device] as const),
    ...joins.flatMap(({ at, chain }) =>
      chain.map((device, i) => [device, i === 0 ? spine[at]! : chain[i - 1]!] as const),
    ),
  ];
  return pairs.map(([from, to]) => [
    from.name,
    to.name,
    from.there || from.known !== '' ? from.known : isNew,
  ]);
}
