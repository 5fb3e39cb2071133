import { barAcross } from './blocks';
import { frame } from './frame';
import { letterSpots, pointer, type Spot } from './letter-spots';
import { box, dot, line, text } from './marks';
import type { Picture } from './picture';
import { ticksTo } from './scale';

/** One line of the list that nothing else beats. */
export interface DollarLine {
  /** Letter under which the list beside the picture explains it. */
  readonly letter: string;
  readonly costUsd: number;
  /** Of a hundred outages of the goal's length, how many are ridden through. */
  readonly inHundred: number;
  readonly advised: boolean;
}

export interface DollarWords {
  readonly title: string;
  readonly description: string;
  readonly across: string;
  readonly up: string;
  readonly budget: string;
  readonly advised: string;
  readonly dollars: (usd: number) => string;
  readonly count: (inHundred: number) => string;
  readonly head: readonly string[];
}

/** Lines across, of a hundred. */
const SHARES = [0, 25, 50, 75, 100];

/** From the middle of a letter down to the line it stands on. */
const LETTER_DROP = 5;

const FIELD = { left: 60, right: 690, top: 64, bottom: 300 };

/** What each dollar buys: money across, outages ridden through up; the budget is a line, the one advised is dark. */
export function dollarsPicture(
  lines: readonly DollarLine[],
  { budgetUsd, words }: { budgetUsd: number | null; words: DollarWords },
): Picture {
  const sorted = [...lines].sort((a, b) => a.costUsd - b.costUsd);
  const ticks = ticksTo(Math.max(100, budgetUsd ?? 0, ...sorted.map((one) => one.costUsd)));
  const { x, y, marks } = frame(
    FIELD,
    {
      from: 0,
      to: ticks.at(-1)!,
      ticks: ticks.map((at) => ({ at, says: words.dollars(at) })),
      name: words.across,
    },
    {
      from: 0,
      to: 100,
      ticks: SHARES.map((at) => ({ at, says: String(at) })),
      name: words.up,
    },
  );
  const dots = sorted.map((one): Spot => [x(one.costUsd), y(one.inHundred)]);
  const letters = letterSpots(dots, { lines: SHARES.map(y), axis: FIELD.left });
  return {
    drawing: {
      id: 'dollars-buy',
      width: 720,
      height: 350,
      title: words.title,
      description: words.description,
      marks: [
        ...marks,
        ...(budgetUsd === null
          ? []
          : [
              line(
                [
                  [x(budgetUsd), FIELD.top],
                  [x(budgetUsd), FIELD.bottom],
                ],
                'dashed',
              ),
              // Towards the middle, where there is room for it.
              x(budgetUsd) > (FIELD.left + FIELD.right) / 2
                ? text(x(budgetUsd) - 5, FIELD.bottom - 8, words.budget, { anchor: 'end' })
                : text(x(budgetUsd) + 5, FIELD.bottom - 8, words.budget),
            ]),
        ...sorted.flatMap((one, i) => [
          one.advised
            ? box([x(one.costUsd) - 6, y(one.inHundred) - 6, 12, 12], 'dark')
            : dot(x(one.costUsd), y(one.inHundred), 5, 'none'),
          line(pointer(dots[i]!, letters[i]!), 'thin'),
          text(letters[i]![0], letters[i]![1] + LETTER_DROP, one.letter, {
            anchor: 'middle',
            bold: one.advised,
          }),
        ]),
      ],
    },
    inTerminal: (width, signs) => {
      const money = Math.max(0, ...sorted.map((one) => words.dollars(one.costUsd).length));
      const count = Math.max(0, ...sorted.map((one) => words.count(one.inHundred).length));
      const cells = Math.max(4, Math.min(40, width - money - count - 7));
      return [
        words.title.slice(0, width),
        ...sorted.map((one) =>
          `${one.letter}${one.advised ? '*' : ' '} ${words.dollars(one.costUsd).padStart(money)} ${barAcross(one.inHundred / 100, cells, signs)} ${words.count(one.inHundred)}`.trimEnd(),
        ),
        ...(sorted.some((one) => one.advised) ? [`* ${words.advised}`] : []),
      ];
    },
    table: {
      head: words.head,
      rows: sorted.map((one) => [
        one.advised ? `${one.letter}*` : one.letter,
        words.dollars(one.costUsd),
        words.count(one.inHundred),
      ]),
    },
  };
}
