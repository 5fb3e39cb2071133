import { barAcross } from './blocks';
import { box, line, text } from './marks';
import type { Picture } from './picture';
import { scaleOf, ticksTo } from './scale';

/** A distance somebody told, against the least there has to be. */
export interface Distance {
  /** "from the generator to the nearest window". */
  readonly name: string;
  /** As told, ft; null where nobody has measured it. */
  readonly toldFeet: number | null;
  /** Null where nothing asks for a least. */
  readonly leastFeet: number | null;
}

export interface SitingWords {
  readonly title: string;
  readonly description: string;
  readonly told: string;
  readonly least: string;
  readonly notMeasured: string;
  readonly noLeast: string;
  readonly feet: (feet: number) => string;
  readonly head: readonly string[];
}

const ROW = 46;
const LEFT = 30;
const RIGHT = 640;

/** Distances told, each on a ruler with the least distance marked. It draws no house: nobody has seen one. */
export function sitingPicture(distances: readonly Distance[], words: SitingWords): Picture {
  const largest = ticksTo(
    Math.max(1, ...distances.flatMap(({ toldFeet, leastFeet }) => [toldFeet ?? 0, leastFeet ?? 0])),
  ).at(-1)!;
  const x = scaleOf({ from: 0, to: largest }, { from: LEFT, to: RIGHT });
  const said = (feet: number | null) => (feet === null ? words.notMeasured : words.feet(feet));
  const saidLeast = (feet: number | null) => (feet === null ? words.noLeast : words.feet(feet));
  return {
    drawing: {
      id: 'siting',
      width: 720,
      height: 50 + distances.length * ROW,
      title: words.title,
      description: words.description,
      marks: [
        box([LEFT, 10, 24, 14], 'light'),
        text(LEFT + 30, 22, words.told),
        line(
          [
            [LEFT + 180, 8],
            [LEFT + 180, 26],
          ],
          'thick',
        ),
        text(LEFT + 188, 22, words.least),
        ...distances.flatMap(({ name, toldFeet, leastFeet }, i) => {
          const y = 54 + i * ROW;
          return [
            text(LEFT, y, name),
            box([LEFT, y + 6, x(toldFeet ?? 0) - LEFT, 14], 'light'),
            ...(leastFeet === null
              ? []
              : [
                  line(
                    [
                      [x(leastFeet), y + 2],
                      [x(leastFeet), y + 24],
                    ],
                    'thick',
                  ),
                ]),
            text(x(toldFeet ?? leastFeet ?? 0) + 6, y + 18, said(toldFeet)),
          ];
        }),
      ],
    },
    inTerminal: (width, signs) => {
      const cells = Math.max(8, Math.min(40, width - 4 - words.notMeasured.length));
      return [
        words.title.slice(0, width),
        ...distances.flatMap(({ name, toldFeet, leastFeet }) => [
          name.slice(0, width),
          `  ${barAcross((toldFeet ?? 0) / largest, cells, signs)} ${said(toldFeet)}`
            .trimEnd()
            .slice(0, width),
          ...(leastFeet === null
            ? []
            : [
                `  ${' '.repeat(markAt(leastFeet / largest, cells))}^ ${words.feet(leastFeet)}`.slice(
                  0,
                  width,
                ),
              ]),
        ]),
        `^ ${words.least}`.slice(0, width),
      ];
    },
    table: {
      head: words.head,
      rows: distances.map(({ name, toldFeet, leastFeet }) => [
        name,
        said(toldFeet),
        saidLeast(leastFeet),
      ]),
    },
  };
}

/** Cells before the mark of a share of the ruler. */
const markAt = (share: number, cells: number) =>
  Math.max(0, Math.min(cells - 1, Math.round(share * cells) - 1));
