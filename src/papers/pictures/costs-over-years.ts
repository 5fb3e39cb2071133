import { barAcross } from './blocks';
import type { Stroke } from './drawing';
import { frame } from './frame';
import { line, text } from './marks';
import type { Picture } from './picture';
import { ticksTo } from './scale';

/** What one route has cost by the end of each year, the purchase in the first figure (year 0). */
export interface CostLine {
  readonly letter: string;
  readonly title: string;
  readonly usdByYear: readonly number[];
}

export interface CostWords {
  readonly title: string;
  readonly description: string;
  readonly across: string;
  readonly up: string;
  readonly dollars: (usd: number) => string;
  readonly year: (year: number) => string;
  readonly head: string;
}

const FIELD = { left: 80, right: 640, top: 50, bottom: 300 };
const strokes: readonly Stroke[] = ['thick', 'dashed', 'plain', 'dotted'];

/** Costs of at most four routes over the years of the study. */
export function costsPicture(costs: readonly CostLine[], words: CostWords): Picture {
  const shown = costs.slice(0, strokes.length);
  const years = Math.max(1, ...shown.map((one) => one.usdByYear.length)) - 1;
  const up = ticksTo(Math.max(100, ...shown.flatMap((one) => one.usdByYear)));
  const every = years <= 10 ? 1 : 5;
  const { x, y, marks } = frame(
    FIELD,
    {
      from: 0,
      to: Math.max(1, years),
      ticks: Array.from({ length: Math.floor(years / every) + 1 }, (_, i) => ({
        at: i * every,
        says: String(i * every),
      })),
      name: words.across,
    },
    {
      from: 0,
      to: up.at(-1)!,
      ticks: up.map((at) => ({ at, says: words.dollars(at) })),
      name: words.up,
    },
  );
  const largest = up.at(-1)!;
  const looked = [0, 5, 10, years].filter(
    (year, i, all) => year <= years && all.indexOf(year) === i,
  );
  return {
    drawing: {
      id: 'costs-over-years',
      width: 720,
      height: 350 + shown.length * 18 + 10,
      title: words.title,
      description: words.description,
      marks: [
        ...marks,
        ...shown.map((one, i) => text(FIELD.left, 368 + i * 18, `${one.letter}: ${one.title}`)),
        ...shown.flatMap((one, i) => [
          line(
            one.usdByYear.map((usd, year) => [x(year), y(Math.max(0, usd))] as const),
            strokes[i]!,
          ),
          text(
            x(one.usdByYear.length - 1) + 8,
            apart(shown, i, (usd) => y(Math.max(0, usd))) + 4,
            one.letter,
            { bold: true },
          ),
        ]),
      ],
    },
    inTerminal: (width, signs) => {
      const last = shown.map((one) => one.usdByYear.at(-1) ?? 0);
      const money = Math.max(0, ...last.map((usd) => words.dollars(usd).length));
      const cells = Math.max(4, Math.min(40, width - money - 4));
      return [
        words.title.slice(0, width),
        ...shown.map((one, i) =>
          `${one.letter} ${barAcross(Math.max(0, last[i]!) / largest, cells, signs)} ${words.dollars(last[i]!).padStart(money)}`.trimEnd(),
        ),
      ];
    },
    table: {
      head: [words.head, ...looked.map(words.year)],
      rows: shown.map((one) => [
        `${one.letter} ${one.title}`,
        ...looked.map((year) => words.dollars(one.usdByYear[year] ?? 0)),
      ]),
    },
  };
}

/** Height of the letter at the end of line `i`, kept clear of the letters before it. */
function apart(lines: readonly CostLine[], i: number, y: (usd: number) => number): number {
  const heights: number[] = [];
  for (const one of lines.slice(0, i + 1)) {
    let at = y(one.usdByYear.at(-1) ?? 0);
    while (heights.some((other) => Math.abs(other - at) < 14)) at -= 14;
    heights.push(at);
  }
  return heights[i]!;
}
