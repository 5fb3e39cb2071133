import type { Signs } from './blocks';
import { barsUp } from './blocks';
import type { Drawing } from './drawing';
import { frame } from './frame';
import { box, line, text } from './marks';
import type { Picture } from './picture';
import { ticksTo } from './scale';

/** One hour of a hard outage. */
export interface HourOfCase {
  readonly wantedKw: number;
  readonly servedKw: number;
  readonly sunKw: number;
  /** What is left in battery or tank at the end of the hour, % of full; null where nothing runs down. */
  readonly leftPercent: number | null;
}

/** Words of the picture: titles and names of what is drawn. */
export interface HardCaseWords {
  readonly title: string;
  readonly description: string;
  readonly hours: string;
  readonly kilowatts: string;
  readonly wanted: string;
  readonly served: string;
  readonly sun: string;
  readonly left: string;
  readonly day: (day: number) => string;
  readonly head: readonly string[];
}

const WIDTH = 720;
const HEIGHT = 420;
const POWER = { left: 60, right: 700, top: 60, bottom: 220 };
const LEFT = { left: 60, right: 700, top: 280, bottom: 370 };

/**
 * A hard outage hour by hour: above, what was wanted, what was given and what the sun gave, kW; below, what is left
 * in battery or tank, %.
 */
export function hardCasePicture(hours: readonly HourOfCase[], words: HardCaseWords): Picture {
  return {
    drawing: drawn(hours, words),
    inTerminal: (width, signs) => inTerminal(hours, words, { width, signs }),
    table: {
      head: words.head,
      rows: days(hours).map((day, i) => [
        words.day(i + 1),
        oneDecimal(sum(day, 'wantedKw')),
        oneDecimal(sum(day, 'servedKw')),
        oneDecimal(sum(day, 'sunKw')),
        percent(day.at(-1)?.leftPercent ?? null),
      ]),
    },
  };
}

function drawn(hours: readonly HourOfCase[], words: HardCaseWords): Drawing {
  const ticks = ticksTo(largestKw(hours));
  const everyDay = Array.from({ length: Math.floor(hours.length / 24) + 1 }, (_, day) => day * 24);
  const step = Math.max(1, Math.ceil(everyDay.length / 8));
  const across = {
    from: 0,
    to: hours.length,
    ticks: everyDay.filter((_, i) => i % step === 0).map((at) => ({ at, says: String(at) })),
    name: words.hours,
  };
  const power = frame(
    POWER,
    { ...across, name: '' },
    {
      from: 0,
      to: ticks.at(-1)!,
      ticks: ticks.map((at) => ({ at, says: String(at) })),
      name: words.kilowatts,
    },
  );
  const store = frame(LEFT, across, {
    from: 0,
    to: 100,
    ticks: [0, 50, 100].map((at) => ({ at, says: `${at}%` })),
    name: words.left,
  });
  const runsDown = hours.some((hour) => hour.leftPercent !== null);
  return {
    id: 'hard-case',
    width: WIDTH,
    height: runsDown ? HEIGHT : POWER.bottom + 40,
    title: words.title,
    description: words.description,
    marks: [
      ...key(words),
      ...hours.map((hour, i) =>
        box(
          [
            power.x(i),
            power.y(hour.servedKw),
            power.x(i + 1) - power.x(i),
            POWER.bottom - power.y(hour.servedKw),
          ],
          'light',
          null,
        ),
      ),
      ...power.marks,
      line(
        stairs(
          hours.map((hour) => hour.wantedKw),
          power,
        ),
        'thick',
      ),
      line(
        stairs(
          hours.map((hour) => hour.sunKw),
          power,
        ),
        'dashed',
      ),
      ...(runsDown
        ? [
            ...store.marks,
            line(
              hours.map((hour, i) => [store.x(i + 1), store.y(hour.leftPercent ?? 0)] as const),
              'plain',
            ),
          ]
        : []),
    ],
  };
}

function key(words: HardCaseWords) {
  return [
    line(
      [
        [300, 20],
        [330, 20],
      ],
      'thick',
    ),
    text(336, 24, words.wanted),
    box([440, 12, 30, 14], 'light', null),
    text(476, 24, words.served),
    line(
      [
        [570, 20],
        [600, 20],
      ],
      'dashed',
    ),
    text(606, 24, words.sun),
  ];
}

/** A line that holds its height through each hour. */
function stairs(
  values: readonly number[],
  { x, y }: { x: (v: number) => number; y: (v: number) => number },
): (readonly [number, number])[] {
  return values.flatMap((value, i) => [[x(i), y(value)] as const, [x(i + 1), y(value)] as const]);
}

/** Columns left of the bars, for the names of the rows. */
const LABEL = 16;

function inTerminal(
  hours: readonly HourOfCase[],
  words: HardCaseWords,
  { width, signs }: { width: number; signs: Signs },
): string[] {
  const columns = Math.max(8, Math.min(hours.length, width - LABEL));
  const largest = largestKw(hours);
  const row = (name: string, shares: readonly number[]) =>
    barsUp(shares, 2, signs).map((bars, i) =>
      `${(i === 0 ? name : '').slice(0, LABEL - 1).padEnd(LABEL)}${bars}`.trimEnd(),
    );
  const mean = (pick: (hour: HourOfCase) => number) => gathered(hours.map(pick), columns);
  return [
    words.title.slice(0, width),
    ...row(
      words.wanted,
      mean((hour) => hour.wantedKw / largest),
    ),
    ...row(
      words.served,
      mean((hour) => hour.servedKw / largest),
    ),
    ...(hours.some((hour) => hour.sunKw > 0)
      ? row(
          words.sun,
          mean((hour) => hour.sunKw / largest),
        )
      : []),
    ...(hours.some((hour) => hour.leftPercent !== null)
      ? row(
          words.left,
          mean((hour) => (hour.leftPercent ?? 0) / 100),
        )
      : []),
    `${' '.repeat(LABEL)}${'0'.padEnd(Math.max(1, columns - String(hours.length).length))}${hours.length}`.slice(
      0,
      width,
    ),
  ];
}

/** `values` gathered into as many columns, each the mean of what falls into it. */
function gathered(values: readonly number[], columns: number): number[] {
  return Array.from({ length: columns }, (_, i) => {
    const from = Math.floor((i * values.length) / columns);
    const to = Math.max(from + 1, Math.floor(((i + 1) * values.length) / columns));
    const part = values.slice(from, to);
    return part.length === 0 ? 0 : part.reduce((a, b) => a + b, 0) / part.length;
  });
}

function days(hours: readonly HourOfCase[]): HourOfCase[][] {
  return Array.from({ length: Math.ceil(hours.length / 24) }, (_, day) =>
    hours.slice(day * 24, day * 24 + 24),
  );
}

const largestKw = (hours: readonly HourOfCase[]) =>
  Math.max(0.1, ...hours.map((hour) => Math.max(hour.wantedKw, hour.servedKw, hour.sunKw)));

const sum = (hours: readonly HourOfCase[], name: 'wantedKw' | 'servedKw' | 'sunKw') =>
  hours.reduce((total, hour) => total + hour[name], 0);

const oneDecimal = (value: number) => String(Math.round(value * 10) / 10);
const percent = (value: number | null) => (value === null ? '-' : `${Math.round(value)}%`);
