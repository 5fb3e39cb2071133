import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { actNowTexts, actNowTitle } from '../../src/faces/act-now-texts';
import { printView } from '../../src/faces/lines/print-view';
import { frameOf } from '../../src/faces/screen/frame-of';
import { glyphsFor } from '../../src/faces/screen/glyphs';
import { begin } from '../../src/interview/begin';
import { dangerSteps, dangersToCheck, dangersTold, mustLeave } from '../../src/interview/dangers';
import { reduce } from '../../src/interview/reduce';
import type { Context, State } from '../../src/interview/state';

const table = interview.dangers;
const ids = table.dangers.map((one) => one.id);
/** Every set of dangers somebody could tick. */
const subsets = Array.from({ length: 2 ** ids.length - 1 }, (_, n) =>
  ids.filter((_, i) => ((n + 1) >> i) & 1),
);
const context: Context = {
  interview,
  short: false,
  nameProblem: () => null,
  spareName: () => 'my-home',
};
const says = (told: readonly string[]) => dangerSteps(table, told).map((step) => step.say);
const tick = (told: readonly string[], answers = {}): State =>
  reduce(context, begin(context, answers), { type: 'answer', answer: [...told] });

/** What a sentence makes somebody do, read from its words and not from its marks in the table. */
const inWords: [act: string, words: RegExp][] = [
  ['switch', /\bswitch (things |big things )?off\b|\bunplug\b|\bbreaker\b|on its battery/i],
  ['phone-here', /^(?!.*(outside|well away|from there|stay in and call)).*\bcall\b/i],
  ['generator', /\b(run|start|point) (a|the|its) (generator|exhaust)\b/i],
  ['touch-generator', /\bstop the generator\b/i],
  [
    'leave-any-side',
    /\b(leave|out)\b(?!.*away from the fallen wire)(?!.*(its reach|of the water|until you are out)).*/i,
  ],
  ['stay', /\bstay (where|in)\b|\bfridge\b|\boven\b|on its battery|^if (you see smoke|the water)/i],
];

test('there are dangers to tell, and each subset of them is tried', () => {
  expect(ids.length).toBeGreaterThanOrEqual(8);
  expect(subsets).toHaveLength(2 ** ids.length - 1);
});

test('the marks of a step say what its words do', () => {
  const wrong: string[] = [];
  for (const { id, say, does } of table.steps) {
    for (const [act, words] of inWords) {
      const negative = /^(do not|touch no|stay out|never)/i.test(say);
      if (!negative && words.test(say) && !does.includes(act))
        wrong.push(`${id} does ${act}: ${say}`);
    }
  }
  expect(wrong).toEqual([]);
});

describe('whatever dangers are told together', () => {
  test('no step is shown that one of them forbids', () => {
    const wrong: string[] = [];
    for (const told of subsets) {
      const forbidden = new Set(dangersTold(table, told).flatMap((one) => one.forbids));
      for (const { id, does } of dangerSteps(table, told)) {
        if (does.some((act) => forbidden.has(act))) wrong.push(`${told.join('+')}: ${id}`);
      }
    }
    expect(wrong).toEqual([]);
  });

  test('no sentence is shown that one of them forbids, by its words', () => {
    const wrong: string[] = [];
    for (const told of subsets) {
      const forbidden = new Set(dangersTold(table, told).flatMap((one) => one.forbids));
      for (const say of says(told)) {
        if (/^(do not|touch no|stay out|never)/i.test(say)) continue;
        for (const [act, words] of inWords)
          if (forbidden.has(act) && words.test(say)) wrong.push(`${told.join('+')}: ${say}`);
      }
    }
    expect(wrong).toEqual([]);
  });

  test('the first line is that of the danger that leaves the fewest minutes', () => {
    for (const told of subsets) {
      const [deadliest] = dangersTold(table, told);
      const [first] = dangerSteps(table, told);
      expect(Math.min(...table.dangers.filter((d) => told.includes(d.id)).map((d) => d.rank))).toBe(
        deadliest!.rank,
      );
      expect(deadliest!.steps, told.join('+')).toContain(first!.id);
    }
  });

  test('where one must leave, leaving is first, 911 or the one who helps is called, and nothing says to go on', () => {
    for (const told of subsets.filter((one) => mustLeave(table, one))) {
      const all = says(told);
      expect(all[0], told.join('+')).toMatch(/^Leave now/);
      expect(
        all.findIndex((say) => /\bcall\b/i.test(say)),
        told.join('+'),
      ).toBeGreaterThan(0);
      expect(all.join('\n')).not.toMatch(/\b(run|start) a generator only\b|planning|go on/i);
    }
  });

  test('with a wire down nobody is sent out by just any door', () => {
    for (const told of subsets.filter((one) => one.includes('fallen-wire'))) {
      for (const say of says(told).filter((one) => /^leave now|everyone out|, leave/i.test(one)))
        expect(say).toMatch(/away from the fallen wire/);
      expect(says(told).join(' ')).toMatch(/35 feet from the wire/);
    }
  });

  test('getting away comes before calling, calling before switching off, then the rest', () => {
    const parts = ['away', 'call', 'off', 'rest'];
    for (const told of subsets) {
      const order = dangerSteps(table, told).map((step) => parts.indexOf(step.part));
      expect(order).toEqual([...order].sort((a, b) => a - b));
      expect(new Set(says(told)).size).toBe(says(told).length);
    }
  });

  test('one instruction is one line, a short sentence', () => {
    for (const { say, id } of table.steps) {
      expect(say.match(/[.!?]( |$)/g), id).toHaveLength(1);
      expect(say.split(' ').length, id).toBeLessThanOrEqual(24);
    }
  });
});

describe('the power is off and there is a smell of gas', () => {
  const told = ['power-off', 'gas-smell'];

  test('the first words are to leave, and no generator is run', () => {
    const all = says(told);
    expect(all[0]).toMatch(/^Leave now/);
    expect(all.join('\n')).not.toMatch(/run a generator|switch off|fridge/i);
    expect(all.join('\n')).toMatch(/911/);
  });

  test('both faces show that and nothing that goes on', () => {
    const state = tick(told);
    const size = { columns: 80, rows: 40 };
    const frame = frameOf({ context, state, draft: null, size, glyphs: glyphsFor({}) });
    const screen = frame.lines.map((line) => line.map((span) => span.text).join('')).join('\n');
    const lines = printView(context, state).join('\n');
    for (const text of [screen, lines]) {
      expect(text).toMatch(/Do this now/);
      expect(text.indexOf('Leave now')).toBeGreaterThan(0);
      expect(text).not.toMatch(/run a generator|planning|go on|draft/i);
    }
    expect(printView(context, state)[1]).toMatch(/^Leave now/);
  });

  test('the way on leads back to the question, and no plan is written meanwhile', () => {
    const state = tick(told, { 'home-name': 'kim' });
    const back = reduce(context, state, { type: 'act', act: 'back' });
    expect(back).toMatchObject({ view: 'ask', at: 'now-danger', ending: null });
    const shown = frameOf({
      context,
      state: back,
      draft: null,
      size: { columns: 80, rows: 40 },
      glyphs: glyphsFor({}),
    });
    expect(JSON.stringify(shown.lines)).not.toMatch(/draft plan/);
    expect(printView(context, back).join('\n')).not.toMatch(/draft/);
    for (const act of ['draft', 'write'] as const) {
      expect(reduce(context, back, { type: 'act', act })).toMatchObject({
        view: 'act-now',
        ending: null,
        ticked: state.ticked,
      });
    }
    const safe = reduce(context, back, { type: 'answer', answer: ['none'] });
    expect(safe.view).toBe('ask');
    expect(safe.at).not.toBe('now-danger');
  });
});

describe('not sure what is dangerous', () => {
  test('shows each danger that cannot wait by itself, the deadliest first', () => {
    const shown = dangersToCheck(table).map((one) => one.id);
    expect(shown).toEqual(
      [...table.dangers]
        .sort((a, b) => a.rank - b.rank)
        .map((one) => one.id)
        .filter((id) => id !== 'power-off'),
    );
    const state = reduce(context, begin(context, {}), { type: 'act', act: 'not-sure' });
    const texts = actNowTexts(interview, state);
    expect(actNowTitle(state)).toMatch(/^Check these now/);
    expect(texts[0]!.title).toMatch(/battery/i);
    expect(JSON.stringify(texts)).not.toMatch(/run a generator only/i);
  });
});
