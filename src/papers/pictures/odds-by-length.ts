import { barAcross } from './blocks';
import { frame } from './frame';
import { box, line, text } from './marks';
import type { Picture } from './picture';

/** Of a hundred outages of one length, how many are ridden through. */
export interface OddsOfLength {
  readonly hours: number;
  readonly likely: number;
  /** By the careful count; null where it was not counted for this length. */
  readonly careful: number | null;
}

export interface OddsWords {
  readonly title: string;
  readonly description: string;
  readonly across: string;
  readonly up: string;
  readonly likely: string;
  readonly careful: string;
  readonly length: (hours: number) => string;
  readonly count: (inHundred: number) => string;
  readonly goal: string;
}

const FIELD = { left: 60, right: 700, top: 70, bottom: 300 };

/** How many outages of each length are ridden through: a bar a length, the goal marked. */
export function oddsPicture(
  odds: readonly OddsOfLength[],
  { goalHours, words }: { goalHours: number; words: OddsWords },
): Picture {
  const frameOf = frame(
    FIELD,
    {
      from: 0,
      to: odds.length,
      ticks: odds.map(({ hours }, i) => ({ at: i + 0.5, says: words.length(hours) })),
      name: words.across,
    },
    {
      from: 0,
      to: 100,
      ticks: [0, 25, 50, 75, 100].map((at) => ({ at, says: String(at) })),
      name: words.up,
    },
  );
  const bar = (i: number, from: number, to: number, value: number, fill: 'light' | 'hatch') =>
    box(
      [
        frameOf.x(i + from),
        frameOf.y(value),
        frameOf.x(i + to) - frameOf.x(i + from),
        FIELD.bottom - frameOf.y(value),
      ],
      fill,
    );
  const goalAt = odds.findIndex(({ hours }) => hours === goalHours);
  return {
    drawing: {
      id: 'odds-by-length',
      width: 720,
      height: 350,
      title: words.title,
      description: words.description,
      marks: [
        box([300, 14, 24, 14], 'light'),
        text(330, 26, words.likely),
        box([480, 14, 24, 14], 'hatch'),
        text(510, 26, words.careful),
        ...frameOf.marks,
        ...odds.flatMap(({ likely, careful }, i) => [
          bar(i, 0.15, careful === null ? 0.85 : 0.5, likely, 'light'),
          ...(careful === null ? [] : [bar(i, 0.5, 0.85, careful, 'hatch')]),
        ]),
        ...(goalAt < 0
          ? []
          : [
              line(
                [
                  [frameOf.x(goalAt + 0.5), FIELD.top - 4],
                  [frameOf.x(goalAt + 0.5), FIELD.bottom],
                ],
                'dotted',
              ),
              text(frameOf.x(goalAt + 0.5), FIELD.top - 10, words.goal, {
                anchor: 'middle',
                bold: true,
              }),
            ]),
      ],
    },
    inTerminal: (width, signs) => {
      const names = odds.map(
        ({ hours }) => `${words.length(hours)}${hours === goalHours ? '*' : ''}`,
      );
      const label = Math.max(0, ...names.map((name) => name.length)) + 1;
      const counts = odds.map(({ likely, careful }) =>
        careful === null ? words.count(likely) : `${words.count(likely)} / ${words.count(careful)}`,
      );
      const cells = Math.max(
        4,
        Math.min(40, width - label - 2 - Math.max(0, ...counts.map((c) => c.length))),
      );
      return [
        words.title.slice(0, width),
        ...odds.map(({ likely }, i) =>
          `${names[i]!.padEnd(label)}${barAcross(likely / 100, cells, signs)}  ${counts[i]}`.trimEnd(),
        ),
        ...(goalAt < 0 ? [] : [`* ${words.goal}`]),
      ];
    },
    table: {
      head: [words.across, words.likely, words.careful],
      rows: odds.map(({ hours, likely, careful }) => [
        words.length(hours),
        words.count(likely),
        careful === null ? '-' : words.count(careful),
      ]),
    },
  };
}
