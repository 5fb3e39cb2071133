import { PassThrough } from 'node:stream';
import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { readArguments } from '../../../src/commands/read-arguments';
import { hideFor, mayPrint, whyNotShared } from '../../../src/commands/talk/shared-screen';
import { showDraft } from '../../../src/commands/talk/show-draft';
import { homesList } from '../../../src/faces/home-choice';
import { frameOf } from '../../../src/faces/screen/frame-of';
import { glyphsFor } from '../../../src/faces/screen/glyphs';
import { choosesUnseen, openAfter } from '../../../src/faces/screen/unseen';
import type { Answer } from '../../../src/interview/answers';
import { begin, show } from '../../../src/interview/begin';
import { hider } from '../../../src/interview/hide-words';
import type { Key } from '../../../src/interview/keys/key';
import { isHidden, tellsOfHidden } from '../../../src/interview/questions/is-hidden';
import type { Question } from '../../../src/interview/questions/question';
import { reduce } from '../../../src/interview/reduce';
import { rowsOf } from '../../../src/interview/rows';
import { sayAnswer } from '../../../src/interview/say-answer';
import type { Context, State } from '../../../src/interview/state';
import { planMarkdown } from '../../../src/papers/household/to-markdown';
import { draftMaker } from '../../../src/plan/draft/draft-of';
import { english } from '../../../src/words/en';
import { frozenPlan } from '../../frozen-plans';
import { answersOf } from '../../households/read-household';

const context: Context = { interview, short: false, nameProblem: () => null, spareName: () => 'a' };
const hide = hider(interview, ['birch-street', 'kim']);
const glyphs = glyphsFor({ LANG: 'C.UTF-8' });
const sizes = [
  { columns: 40, rows: 24 },
  { columns: 80, rows: 24 },
  { columns: 120, rows: 40 },
  { columns: 30, rows: 10 },
];
const devices = [
  'oxygen-concentrator',
  'ventilator',
  'cpap',
  'dialysis',
  'suction',
  'nebuliser',
  'feeding-pump',
  'fridge-medicine',
];
const told = {
  ...answersOf('birch-street'),
  'home-name': 'kim',
  'medical-devices': devices,
  'must-run': ['heat', 'fridge', 'medical'],
};
const draft = showDraft(draftMaker(interview)(told));

function drawn(state: State, size = sizes[1]!, open = false): string {
  const frame = frameOf({
    context,
    state,
    draft,
    changed: null,
    size,
    glyphs,
    hiding: { open, hide },
  });
  return frame.lines.map((line) => line.map(({ text }) => text).join('')).join('\n');
}

/** A private answer as somebody might give it. */
function answerTo(question: Question): Answer {
  if (question.kind === 'choice') return question.choices![0]!.id;
  if (question.kind === 'choices') return question.choices!.slice(0, 2).map(({ id }) => id);
  return question.kind === 'number' ? question.possible![1] : 'kim';
}

const hidden = interview.questions.filter(({ id }) => isHidden(interview, id));

describe('what is typed and chosen', () => {
  test('is hidden in every question of names, people, health and money, at every size', () => {
    expect(hidden.length).toBeGreaterThan(40);
    const seen: string[] = [];
    for (const question of hidden) {
      const answer = answerTo(question);
      const state = show(
        context,
        { ...begin(context, {}), answers: { ...told, [question.id]: answer } },
        question.id,
      );
      for (const size of sizes) {
        const text = drawn(state, size);
        // A hint may name the same hours, and the plan so far the same feet.
        const labels = (question.choices ?? []).map(({ label }, i) => `${i + 1}. ${label}`);
        const typed = question.choices === undefined ? [`[ ${state.field.text}`] : [];
        for (const secret of [...labels, ...typed]) {
          if (text.includes(secret)) seen.push(`${question.id}: ${secret}`);
        }
      }
    }
    expect(seen).toEqual([]);
  });

  test('stands there while it is open', () => {
    const question = interview.questions.find(({ id }) => id === 'people-risk')!;
    const state = show(context, { ...begin(context, {}), answers: told }, question.id);
    expect(drawn(state)).toContain('Hidden on a shared screen. Ctrl+O shows it while you choose.');
    expect(drawn(state, sizes[1], true)).toContain('Someone over 65');
    expect(drawn(state, sizes[1], true)).toContain('Ctrl+O hide');
    const home = show(context, state, 'budget-now');
    expect(drawn(home, sizes[1], true)).toContain('any key hides again');
  });

  test('a list is never ticked unseen, and stays open while one chooses in it', () => {
    const at = show(context, { ...begin(context, {}), answers: told }, 'medical-devices');
    const press = (state: State, key: Key) => reduce(context, state, { type: 'key', key });
    const tick = { name: 'text', text: ' ' } as const;
    const marked = press(at, { name: 'down' });
    const closed = { open: false };
    expect(choosesUnseen(context, marked, tick, closed)).toBe(true);
    expect(choosesUnseen(context, marked, { name: 'enter' }, closed)).toBe(true);
    expect(choosesUnseen(context, marked, { name: 'down' }, closed)).toBe(false);
    expect(choosesUnseen(context, marked, tick, { open: true })).toBe(false);
    expect(choosesUnseen(context, marked, tick, null)).toBe(false);
    // "I'm not sure" is to be seen, so it may be chosen.
    const rows = rowsOf(context, marked);
    const unsure = rows.findIndex((row) => row.kind === 'act');
    expect(choosesUnseen(context, { ...marked, row: unsure }, { name: 'enter' }, closed)).toBe(
      false,
    );
    const places = show(context, at, 'water-source');
    expect(choosesUnseen(context, { ...places, row: 0 }, { name: 'enter' }, closed)).toBe(false);

    const staysOpen = (key: Key, after: State) =>
      openAfter(context, { before: marked, key, after, open: true });
    expect(staysOpen(tick, press(marked, tick))).toBe(true);
    expect(staysOpen({ name: 'down' }, press(marked, { name: 'down' }))).toBe(true);
    expect(staysOpen({ name: 'show' }, marked)).toBe(false);
    expect(staysOpen({ name: 'enter' }, places)).toBe(false);
    expect(staysOpen({ name: 'text', text: '?' }, press(marked, { name: 'text', text: '?' }))).toBe(
      false,
    );
    const money = show(context, at, 'budget-now');
    const typed = { name: 'text', text: '5' } as const;
    expect(
      openAfter(context, { before: money, key: typed, after: press(money, typed), open: true }),
    ).toBe(false);
  });

  test('a key that would have ticked unseen says what to press', () => {
    const state = show(context, { ...begin(context, {}), answers: told }, 'medical-devices');
    const frame = frameOf({
      context,
      state,
      draft,
      changed: null,
      size: sizes[1]!,
      glyphs,
      hiding: { open: false, unseen: true, hide },
    });
    const text = frame.lines.map((line) => line.map((span) => span.text).join('')).join('\n');
    expect(text).toContain('Nothing is chosen unseen. Press Ctrl+O, then choose.');
    expect(text).not.toContain('Ventilator');
  });

  test('does not show in what is said about it either', () => {
    const budget = show(context, { ...begin(context, {}), answers: told }, 'budget-now');
    const refused = reduce(context, budget, { type: 'typed', text: 'about 7,777 or so' });
    expect(refused.error).toContain('7,777');
    expect(drawn(refused)).not.toContain('7,777');
    const unusual = reduce(context, show(context, budget, 'people-count'), {
      type: 'typed',
      text: '13',
    });
    expect(unusual.view).toBe('unusual');
    expect(drawn(unusual)).not.toContain('13');
  });

  test('is not in the list of answers', () => {
    const state: State = { ...begin(context, told), view: 'check', answers: told };
    const tall = { columns: 120, rows: 300 };
    const text = drawn(state, tall);
    for (const { id, says } of hidden) {
      if (told[id as keyof typeof told] === undefined) continue;
      const question = interview.questions.find((one) => one.id === id)!;
      const said = sayAnswer(question, told[id as keyof typeof told]);
      expect(text).not.toContain(`${says}: ${said}`);
    }
    expect(text).toContain('ZIP code: 48911');
  });
});

test('no amount of money and no word of health stands beside a question', () => {
  const state = show(context, { ...begin(context, {}), answers: told }, 'water-source');
  for (const size of sizes) {
    expect(drawn(state, size)).not.toMatch(/\$\d/);
    expect(drawn(state, size)).not.toMatch(/oxygen|ventilat|dialys|powered device/i);
  }
  expect(drawn(state, sizes[2], true)).toMatch(/\$\d/);
});

test('words that every home is asked stay; those asked only because of a device do not', () => {
  const risk = interview.questions.find(({ id }) => id === 'medical-devices')!;
  expect(tellsOfHidden(interview, risk)).toBe(false);
  const oxygen = interview.questions.find(({ id }) => id === 'oxygen-hours')!;
  expect(tellsOfHidden(interview, oxygen)).toBe(true);
  const state = show(context, { ...begin(context, {}), answers: told }, 'oxygen-hours');
  expect(drawn(state)).not.toMatch(/oxygen/i);
});

test('what to do at once is never hidden', () => {
  const danger = reduce(context, begin(context, {}), {
    type: 'answer',
    answer: ['unwell', 'power-off'],
  });
  const open = drawn(danger, { columns: 80, rows: 60 }, true).replace('any key hides again   ', '');
  expect(drawn(danger, { columns: 80, rows: 60 }).replace('Ctrl+O show   ', '')).toBe(open);
});

test('the plan shows no name, no money and no device of the home', () => {
  const markdown = planMarkdown(frozenPlan(told, '2026-01-01', 5), english);
  expect(markdown).toMatch(/\$\d/);
  expect(markdown).toMatch(/oxygen/i);
  const shown = hide(markdown);
  expect(shown).not.toMatch(/\$\s?\d/);
  expect(shown).not.toMatch(/\bkim\b/i);
  const generic =
    /^(machine|someone|something|another|breathe|that|help|helps|makes|from|room|sleep|blood|home|cleans|turns|into|mist|food|airway|clears|must|stay|cold|such|mask|cough|pump|device|devices|else|plugs|health|power|with|this|them|pumps|fridge|small|wheels|chair|scooter|mattress|other|bed|air)$/;
  const choices = interview.questions.find(({ id }) => id === 'medical-devices')!.choices!;
  const words = choices
    .filter(({ id }) => devices.includes(id))
    .flatMap(({ label }) => label.toLowerCase().match(/[a-z]{4,}/g) ?? [])
    .filter((word) => !generic.test(word));
  expect(words.length).toBeGreaterThan(8);
  expect(words.filter((word) => new RegExp(`\\b${word}\\b`, 'i').test(shown))).toEqual([]);
});

test('the list of homes hides their names', () => {
  const home = {
    file: 'kim.home.yaml',
    answered: 4,
    toFirstPlan: 9,
    isWhole: false,
    hasPlan: false,
    changedAt: 1,
  };
  const { labels } = homesList([{ ...home, name: 'kim', street: ['ZIP code'] }]);
  expect(labels.join()).toContain('kim');
  expect(labels.map(hide).join()).not.toContain('kim');
});

describe('answers that could not be kept', () => {
  const input = () => Object.assign(new PassThrough(), { isTTY: true, fd: 0 });
  const ask = async (...bytes: readonly string[]) => {
    const stdin = input();
    const asked = mayPrint({ sharedScreen: true }, 'Not kept.', stdin as never);
    // The keyboard is opened after a piece of the program was loaded.
    await new Promise((resolve) => setTimeout(resolve, 50));
    for (const one of bytes) stdin.write(one);
    return asked;
  };

  test('are printed after Enter, left out after Ctrl+C, whatever else is pressed', async () => {
    expect(await ask('x', '\r')).toBe(true);
    expect(await ask(' ', '\x03')).toBe(false);
    expect(await mayPrint({ sharedScreen: false }, '')).toBe(true);
  });
});

test('line by line nothing can be hidden, so it is refused there', () => {
  const args = readArguments(['--plain', '--shared-screen']);
  if ('wrong' in args) throw new Error(args.wrong);
  expect(whyNotShared(args)).toContain('needs the whole window');
  expect(whyNotShared({ ...args, sharedScreen: false })).toBeNull();
});

test('a home kept in another folder is hidden by its name too', () => {
  const hidden = hideFor({ sharedScreen: true }, ['aunt-may'])!;
  expect(hidden('Backup power plan: aunt-may')).not.toContain('aunt-may');
  expect(hideFor({ sharedScreen: false }, ['aunt-may'])).toBeUndefined();
});
