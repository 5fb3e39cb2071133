import { describe, expect, test } from 'vitest';
import { understand } from '../../src/faces/lines/understand';
import { frameOf } from '../../src/faces/screen/frame-of';
import { glyphsFor } from '../../src/faces/screen/glyphs';
import { reduce } from '../../src/interview/reduce';
import type { State } from '../../src/interview/state';
import { readAnswer } from '../../src/interview/what-if/read-answer';
import { at, context } from './every-view';

/** What a value in a home file is, or what the sentence says. */
type Expected = number | RegExp;

/** One question of every kind of field, and what people type there. */
const table: readonly [id: string, says: string, cases: Readonly<Record<string, Expected>>][] = [
  [
    'dialysis-watts',
    'Dialysis power',
    {
      lots: /could not read "lots" as a number in watts/,
      'about 3 tons': /"about 3 tons" is in another unit.*a number in watts/,
      '1,500': 1500,
      '1.5 kW': 1500,
      '2 x 60 W': 120,
      '5 gallons': /"5 gallons" is in another unit/,
      '-5': /must be between 100 and 3,000 W/,
      '3-4': /could not read "3-4" as one number/,
      '-': /could not read "-"/,
      '\u{1F600}': /could not read/,
      '3,5': /We read "3,5" as two numbers\. If you mean 3\.5, .* with a point/,
      'one and a half kW': 1500,
    },
  ],
  [
    'device-safe-hours',
    'Safe time without the device',
    {
      half: 0.5,
      '1/2': 0.5,
      'one and a half': 1.5,
      '2 and a half hours': 2.5,
      '90 min': 1.5,
      '3 days': 72,
      '4 days': /between 0 h and 3 days/,
    },
  ],
  [
    'home-elevation',
    'Height above sea level',
    { '100 m': 328.083989501, '100 feet': 100, '20 F': /another unit/ },
  ],
  ['place-lowest', 'Coldest outdoors', { '-10 C': 14, '-5': -5, none: /could not read "none"/ }],
  [
    'heat-pump-tons',
    'Heat pump size',
    { 'about 3 tons': 3, 'half a ton': 0.5, '1.5 kW': /another unit/ },
  ],
  [
    'vehicle-miles',
    'Miles kept in the vehicle',
    { lots: /a number in miles/, '-5': /between 0 and 500 miles/, forty: 40 },
  ],
  [
    'people-count',
    'People at home',
    { '1/2': /between 1 and 20 people/, two: 2, '3 or 4': /as one number/ },
  ],
  ['battery-years', 'Age of the battery', { '6 months': 0.5, '30 m': /another unit/, '3': 3 }],
  ['battery-reserve', 'Kept for outages', { '1/2': 50, half: 50, '30%': 30, '0.2': 0.2 }],
  ['bill-price', 'Price of power', { '$0.19': 19, '0.19': 19, '5 gallons': /another unit/ }],
  [
    'budget-now',
    'Budget this month',
    {
      '$1,500': 1500,
      '2k': 2000,
      'two hundred': 200,
      'a thousand': 1000,
      'lots of money': /could not read/,
    },
  ],
  ['home-zip', 'ZIP code', { '1': /five digits/, '?!': /five digits/ }],
];

/** The question with nothing typed yet: a field shows what was answered before. */
const empty = (id: string): State => ({
  ...at(id),
  field: { ...at(id).field, text: '', cursor: 0 },
});

const typedAt = (id: string, typed: string): State =>
  [{ name: 'text', text: typed } as const, { name: 'enter' } as const].reduce<State>(
    (state, key) => reduce(context, state, { type: 'key', key }),
    empty(id),
  );

function screenOf(state: State): string {
  const { lines } = frameOf({
    context,
    state,
    draft: null,
    size: { columns: 80, rows: 24 },
    glyphs: glyphsFor({}),
  });
  return lines
    .map((line) =>
      line
        .map(({ text }) => text)
        .join('')
        .trim(),
    )
    .join(' ');
}

/** Only what a home with these devices and things is asked can be typed. */
const questionOf = (id: string) => context.interview.questions.find((one) => one.id === id)!;

describe.each(table)('%s', (id, says, cases) => {
  test.each(Object.entries(cases))('%s', (typed, expected) => {
    const read = readAnswer(questionOf(id), typed, []);
    if (typeof expected === 'number') {
      expect(read.ok ? read.answer : read.says).toBeCloseTo(expected, 6);
      return;
    }
    expect(read.ok ? read.answer : read.says).toMatch(expected);
    const message = read.ok ? '' : read.says;
    expect(message).toContain(says);

    const screen = typedAt(id, typed);
    expect(screen.error).toBe(message);
    expect(screen.field.text).toBe(typed);
    const shown = screenOf(screen).replaceAll(/\s+/g, ' ');
    expect(shown).toContain(message.slice(0, 40));
    expect(shown).toContain(typed);

    const understood = understand(context, at(id), typed);
    if (understood.kind !== 'event') throw new Error(`lines: ${JSON.stringify(understood)}`);
    expect(reduce(context, at(id), understood.event).error).toBe(message);

    const moved = reduce(context, screen, { type: 'key', key: { name: 'backspace' } });
    expect(moved.error).toBeNull();
  });
});
