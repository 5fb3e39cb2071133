import { barsUp } from './blocks';
import { box, dot, line, text } from './marks';
import type { Picture } from './picture';

/** Something to do in some months of the year, January is 1. */
export interface YearTask {
  readonly name: string;
  readonly months: readonly number[];
}

export interface YearWords {
  readonly title: string;
  readonly description: string;
  /** Short names of the months, January first. */
  readonly months: readonly string[];
  readonly kept: string;
  readonly task: string;
}

const LEFT = 230;
const CELL = 38;
const ROW = 30;

/**
 * The year as a strip: what to do in which month, and above it how much charge to keep for outages.
 *
 * @param keepPercent by month, January first, % of full; empty where no battery keeps a charge; null: full is not enough
 */
export function yearPicture(
  tasks: readonly YearTask[],
  { keepPercent, words }: { keepPercent: readonly (number | null)[]; words: YearWords },
): Picture {
  const kept = keepPercent.length === 12;
  const top = kept ? 130 : 50;
  const bar = (percent: number) => (percent / 100) * 70;
  return {
    drawing: {
      id: 'the-year',
      width: LEFT + 12 * CELL + 20,
      height: top + tasks.length * ROW + 20,
      title: words.title,
      description: words.description,
      marks: [
        ...words.months.map((name, i) =>
          text(LEFT + (i + 0.5) * CELL, top - 8, name, { anchor: 'middle', size: 11 }),
        ),
        ...(kept
          ? [
              text(LEFT - 10, 70, words.kept, { anchor: 'end' }),
              ...keepPercent.map((percent, i) =>
                box(
                  [LEFT + i * CELL + 8, 100 - bar(percent ?? 100), CELL - 16, bar(percent ?? 100)],
                  percent === null ? 'hatch' : 'light',
                ),
              ),
            ]
          : []),
        ...tasks.flatMap((task, row) => {
          const y = top + row * ROW + 18;
          return [
            line(
              [
                [10, y + 12],
                [LEFT + 12 * CELL, y + 12],
              ],
              'thin',
            ),
            text(LEFT - 10, y + 4, task.name, { anchor: 'end' }),
            ...task.months.map((month) => dot(LEFT + (month - 0.5) * CELL, y, 6, 'dark')),
          ];
        }),
      ],
    },
    inTerminal: (width, signs) => {
      const sign = signs === 'ascii' ? 'x' : '●';
      const label = Math.max(
        8,
        Math.min(width - 13, Math.max(0, ...tasks.map(({ name }) => name.length)) + 1),
      );
      return [
        words.title.slice(0, width),
        `${' '.repeat(label)}${words.months.map((name) => name.slice(0, 1)).join('')}`,
        ...(kept
          ? barsUp(
              keepPercent.map((p) => (p ?? 100) / 100),
              2,
              signs,
            ).map((bars, i) =>
              `${(i === 0 ? words.kept : '').slice(0, label - 1).padEnd(label)}${bars}`.trimEnd(),
            )
          : []),
        ...tasks.map(
          ({ name, months }) =>
            `${name.slice(0, label - 1).padEnd(label)}${Array.from({ length: 12 }, (_, i) => (months.includes(i + 1) ? sign : '.')).join('')}`,
        ),
      ];
    },
    table: {
      head: [words.task, ...words.months],
      rows: [
        ...(kept
          ? [[words.kept, ...keepPercent.map((p) => (p === null ? '>100%' : `${Math.round(p)}%`))]]
          : []),
        ...tasks.map(({ name, months }) => [
          name,
          ...Array.from({ length: 12 }, (_, i) => (months.includes(i + 1) ? 'x' : '')),
        ]),
      ],
    },
  };
}
