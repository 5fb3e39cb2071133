import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { printView } from '../../src/faces/lines/print-view';
import { begin } from '../../src/interview/begin';
import { dangersTold, mustLeave } from '../../src/interview/dangers';
import { reduce } from '../../src/interview/reduce';
import { rowsOf } from '../../src/interview/rows';
import type { Context, State } from '../../src/interview/state';
import { tonightFor } from '../../src/interview/tonight';
import { foodSafety } from '../../src/tables/food-safety';
import { readingGrade } from './reading-grade';

const context: Context = {
  interview,
  short: false,
  nameProblem: () => null,
  spareName: () => 'my-home',
};
const ids = interview.dangers.dangers.map((one) => one.id);
const subsets = Array.from({ length: 2 ** ids.length - 1 }, (_, n) =>
  ids.filter((_, i) => ((n + 1) >> i) & 1),
);
const tick = (told: readonly string[]): State =>
  reduce(context, begin(context, {}), { type: 'answer', answer: [...told] });
const offers = (state: State) =>
  rowsOf(context, state).some((row) => row.kind === 'act' && row.act === 'tonight');

describe('what to do tonight', () => {
  test('is offered while the power is off and nobody has to leave, for every set of dangers', () => {
    for (const told of subsets) {
      const due = told.includes('power-off') && !mustLeave(interview.dangers, told);
      expect({ told, offers: offers(tick(told)) }).toEqual({ told, offers: due });
    }
    expect(offers(tick(['none']))).toBe(false);
  });

  test('shows nothing that a danger told forbids, read from the words', () => {
    const words: [string, RegExp][] = [
      ['generator', /\brun a generator\b/i],
      ['switch', /\bswitch off\b/i],
      [
        'phone-here',
        /^(?!.*(outside|then call)).*\b(call its|call 911 early|tell the power|dial)\b/i,
      ],
    ];
    for (const told of subsets) {
      const forbidden = new Set(
        dangersTold(interview.dangers, told).flatMap(({ forbids }) => forbids),
      );
      const says = tonightFor(interview.tonight, interview.dangers, told).flatMap(({ lines }) =>
        lines.map(({ say }) => say),
      );
      for (const [act, pattern] of words) {
        if (forbidden.has(act)) expect(says.filter((say) => pattern.test(say))).toEqual([]);
      }
    }
    const all = tonightFor(interview.tonight, interview.dangers, ['power-off']);
    for (const [, pattern] of words)
      expect(all.some(({ lines }) => lines.some(({ say }) => pattern.test(say)))).toBe(true);
  });

  test('holds warmth, food, water, devices, carbon monoxide and whom to call, a source each', () => {
    expect(interview.tonight.map(({ id }) => id).sort()).toEqual([
      'call',
      'co',
      'device',
      'food',
      'warmth',
      'water',
    ]);
    for (const { source } of interview.tonight) expect(source).toMatch(/[A-Z]/);
  });

  // USDA Food Safety and Inspection Service on food safety in a power outage, repeated by FDA.
  test('keeps to the published hours and degrees of food', () => {
    const value = (id: string) => foodSafety.rows.find((row) => row.id === id)!.value;
    const food = interview.tonight.find(({ id }) => id === 'food')!;
    const text = food.lines.map(({ say }) => say).join(' ');
    expect(text).toContain(`about ${value('closed-fridge')} hours`);
    expect(text).toContain(`a full freezer for ${value('full-freezer')}`);
    expect(text).toContain(`a half-full one for ${value('half-full-freezer')}`);
    expect(text).toContain(`above ${value('keep-at-or-below')} degrees F`);
    expect(text).toContain(`for ${value('discard-after-warm')} hours`);
  });

  test('is written for everybody: at most grade 7', () => {
    for (const { lines } of interview.tonight) {
      const text = lines.map(({ say }) => say).join(' ');
      expect({ text, ok: readingGrade(text) <= 7 }).toEqual({ text, ok: true });
    }
  });

  test('ends, or goes on to planning, and answers nothing by Enter', () => {
    const page = reduce(context, tick(['power-off']), { type: 'act', act: 'tonight' });
    expect(printView(context, page).join('\n')).toContain('Source: USDA');
    const enters = Array.from({ length: 30 }).reduce<State>(
      (at) => reduce(context, at, { type: 'key', key: { name: 'enter' } }),
      page,
    );
    expect(enters).toMatchObject({ view: 'tonight', ending: null });
    const on = reduce(context, page, { type: 'act', act: 'go-on' });
    expect(on).toMatchObject({ view: 'ask', at: 'home-name' });
    expect(reduce(context, page, { type: 'act', act: 'stop-now' }).ending).toBe('danger');
  });
});
