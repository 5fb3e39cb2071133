import fc from 'fast-check';
import { expect, test } from 'vitest';
import { costsPicture } from '../../../src/papers/pictures/costs-over-years';
import { dollarsPicture } from '../../../src/papers/pictures/dollars-buy';
import { hardCasePicture } from '../../../src/papers/pictures/hard-case';
import { ladderPicture } from '../../../src/papers/pictures/ladder-gauge';
import { oddsPicture } from '../../../src/papers/pictures/odds-by-length';
import { oneLinePicture } from '../../../src/papers/pictures/one-line';
import type { Picture } from '../../../src/papers/pictures/picture';
import { sitingPicture } from '../../../src/papers/pictures/siting-distances';
import { yearPicture } from '../../../src/papers/pictures/the-year';
import { toSvg } from '../../../src/papers/pictures/to-svg';

const said = { title: 'A title', description: 'What it shows.' };
const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
const dollars = (usd: number) => `$${Math.round(usd)}`;
const count = (inHundred: number) => `${Math.round(inHundred)} of 100`;

const hour = fc.record({
  wantedKw: fc.double({ min: 0, max: 20, noNaN: true }),
  servedKw: fc.double({ min: 0, max: 20, noNaN: true }),
  sunKw: fc.double({ min: 0, max: 20, noNaN: true }),
  leftPercent: fc.option(fc.double({ min: 0, max: 100, noNaN: true })),
});
const word = fc.string({ maxLength: 40 });

/** Every picture, of anything it may be handed. */
const pictures: Record<string, fc.Arbitrary<Picture>> = {
  'hard case': fc.array(hour, { minLength: 1, maxLength: 340 }).map((hours) =>
    hardCasePicture(hours, {
      ...said,
      hours: 'hours',
      kilowatts: 'kW',
      wanted: 'wanted',
      served: 'given',
      sun: 'sun',
      left: 'left',
      day: (day) => `day ${day}`,
      head: ['day', 'wanted, kWh', 'given, kWh', 'sun, kWh', 'left at its end'],
    }),
  ),
  odds: fc
    .uniqueArray(fc.integer({ min: 1, max: 336 }), { minLength: 1, maxLength: 8 })
    .chain((lengths) =>
      fc.tuple(
        fc.constant(lengths),
        fc.integer({ min: 0, max: 100 }),
        fc.option(fc.integer({ min: 0, max: 100 })),
      ),
    )
    .map(([lengths, likely, careful]) =>
      oddsPicture(
        lengths.map((hours) => ({ hours, likely, careful })),
        {
          goalHours: lengths[0]!,
          words: {
            ...said,
            across: 'length',
            up: 'of 100',
            likely: 'likely',
            careful: 'careful',
            length: (hours) => `${hours} h`,
            count,
            goal: 'your goal',
          },
        },
      ),
    ),
  dollars: fc
    .array(
      fc.record({
        letter: fc.constantFrom('A', 'B', 'C'),
        costUsd: fc.double({ min: 0, max: 90_000, noNaN: true }),
        inHundred: fc.double({ min: 0, max: 100, noNaN: true }),
        advised: fc.boolean(),
      }),
      { maxLength: 8 },
    )
    .chain((lines) => fc.tuple(fc.constant(lines), fc.option(fc.integer({ min: 0, max: 50_000 }))))
    .map(([lines, budgetUsd]) =>
      dollarsPicture(lines, {
        budgetUsd,
        words: {
          ...said,
          across: 'price',
          up: 'of 100',
          budget: 'what you can spend',
          advised: 'advised',
          dollars,
          count,
          head: ['', 'price', 'odds'],
        },
      }),
    ),
  ladder: fc
    .array(
      fc.record({
        atPercent: fc.integer({ min: 0, max: 100 }),
        reads: fc.constant('70%'),
        off: fc.array(word, { maxLength: 6 }),
      }),
      {
        maxLength: 6,
      },
    )
    .map((rungs) =>
      ladderPicture(rungs, { ...said, nothing: 'nothing', head: ['at', 'goes off'] }),
    ),
  costs: fc
    .array(
      fc.array(fc.double({ min: -5000, max: 90_000, noNaN: true }), {
        minLength: 1,
        maxLength: 21,
      }),
      { maxLength: 4 },
    )
    .map((all) =>
      costsPicture(
        all.map((usdByYear, i) => ({ letter: 'ABCD'[i]!, title: 'a route', usdByYear })),
        {
          ...said,
          across: 'years',
          up: '$',
          dollars,
          year: (year) => `year ${year}`,
          head: 'route',
        },
      ),
    ),
  'one-line': fc
    .tuple(
      fc.array(fc.record({ name: word, known: word, there: fc.boolean() }), {
        minLength: 1,
        maxLength: 6,
      }),
      fc.array(fc.record({ name: word, known: word, there: fc.boolean() }), {
        minLength: 1,
        maxLength: 3,
      }),
    )
    .map(([spine, chain]) =>
      oneLinePicture(
        { spine, joins: [{ at: 0, chain }] },
        { ...said, isNew: 'new', head: ['from', 'to', 'known'] },
      ),
    ),
  siting: fc
    .array(
      fc.record({
        name: word,
        toldFeet: fc.option(fc.double({ min: 0, max: 300, noNaN: true })),
        leastFeet: fc.option(fc.double({ min: 1, max: 60, noNaN: true })),
      }),
      { maxLength: 6 },
    )
    .map((distances) =>
      sitingPicture(distances, {
        ...said,
        told: 'as told',
        least: 'at least',
        notMeasured: 'not measured',
        noLeast: 'none asked',
        feet: (feet) => `${Math.round(feet)} ft`,
        head: ['what', 'told', 'at least'],
      }),
    ),
  'the year': fc
    .tuple(
      fc.array(
        fc.record({
          name: word,
          months: fc.array(fc.integer({ min: 1, max: 12 }), { maxLength: 12 }),
        }),
        { maxLength: 8 },
      ),
      fc.option(
        fc.array(fc.option(fc.integer({ min: 0, max: 100 })), { minLength: 12, maxLength: 12 }),
      ),
    )
    .map(([tasks, keepPercent]) =>
      yearPicture(tasks, {
        keepPercent: keepPercent ?? [],
        words: { ...said, months, kept: 'charge kept', task: 'what' },
      }),
    ),
};

for (const [name, any] of Object.entries(pictures)) {
  test(`${name}: every mark lies in the view box, and the SVG is well formed, plain and always the same`, () => {
    fc.assert(
      fc.property(any, (picture) => {
        const { drawing } = picture;
        const xs = drawing.marks.flatMap((m) =>
          m.kind === 'box'
            ? [m.x, m.x + m.width]
            : m.kind === 'line'
              ? m.points.map((p) => p.x)
              : [m.at.x],
        );
        const ys = drawing.marks.flatMap((m) =>
          m.kind === 'box'
            ? [m.y, m.y + m.height]
            : m.kind === 'line'
              ? m.points.map((p) => p.y)
              : [m.at.y],
        );
        expect(Math.min(0, ...xs, ...ys)).toBeGreaterThanOrEqual(0);
        expect(Math.max(0, ...xs)).toBeLessThanOrEqual(drawing.width + 0.01);
        expect(Math.max(0, ...ys)).toBeLessThanOrEqual(drawing.height + 0.01);
        const flat = drawing.marks.filter(
          (m) => m.kind === 'box' && !(Math.min(m.width, m.height) >= -0.01),
        );
        expect(flat).toEqual([]);
        const svg = toSvg(drawing);
        expect(svg).toBe(toSvg(structuredClone(drawing)));
        // Words between tags may be anything, "href" too.
        const markup = svg.replace(/>[^<]*</g, '><');
        expect(markup).not.toMatch(/NaN|Infinity|undefined|<script|href|="[^"]*\d\.\d\d/);
        expect(tagsBalance(svg)).toBe(true);
        expect(svg).toContain(`<title id="${drawing.id}-title">`);
        expect(svg).toContain(`<desc id="${drawing.id}-desc">`);
      }),
      { numRuns: 60 },
    );
  });

  test(`${name}: in a terminal no line is wider than the window, in ASCII no sign is outside it`, () => {
    fc.assert(
      fc.property(any, fc.integer({ min: 40, max: 120 }), (picture, width) => {
        for (const signs of ['blocks', 'ascii'] as const)
          expect(
            picture
              .inTerminal(width, signs)
              .filter((line) => line.length > width || /NaN|undefined/.test(line)),
          ).toEqual([]);
        const drawn = picture.inTerminal(width, 'ascii').join('');
        expect(drawn).not.toMatch(/[─-▟●]/);
      }),
      { numRuns: 60 },
    );
  });

  test(`${name}: the table has as many cells in each row as in its head`, () => {
    fc.assert(
      fc.property(any, ({ table }) => {
        for (const row of table.rows) expect(row).toHaveLength(table.head.length);
      }),
      { numRuns: 30 },
    );
  });
}

/** Every tag that is opened is closed, in order. */
function tagsBalance(svg: string): boolean {
  const open: string[] = [];
  for (const [, closing, name, own] of svg.matchAll(/<(\/?)([a-z]+)[^<>]*?(\/?)>/g)) {
    if (own === '/') continue;
    if (closing === '') open.push(name!);
    else if (open.pop() !== name) return false;
  }
  return open.length === 0;
}
