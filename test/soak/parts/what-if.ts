import interview from '#compiled/questions.js';
import { compareLines } from '../../../src/faces/compare-lines';
import { frameHeight } from '../../../src/faces/screen/frame';
import { glyphsFor } from '../../../src/faces/screen/glyphs';
import { lineWidth } from '../../../src/faces/screen/line';
import { whatIfFrame } from '../../../src/faces/screen/views/what-if';
import type { Key } from '../../../src/interview/keys/key';
import { readTried } from '../../../src/interview/what-if/read-tried';
import { reduceWhatIf } from '../../../src/interview/what-if/reduce-what-if';
import { TRIED_KEYS } from '../../../src/interview/what-if/tried-keys';
import { beginWhatIf, triedIn, type WhatIf } from '../../../src/interview/what-if/what-if-state';
import { changesBetween } from '../../../src/plan/changes/changes-between';
import type { PlanFacts, Span } from '../../../src/plan/changes/plan-facts';
import { quickPlans } from '../../../src/plan/changes/quick-plan';
import type { SaidChanges } from '../../../src/plan/changes/said-changes';
import { sayChanges } from '../../../src/words/en/changes/say-changes';
import { seeded } from '../../fixtures/random-problem';
import { randomHome } from '../../random-home';
import { BROKEN } from '../never/papers';
import { met, note, type Part } from '../part';

const AS_OF = '2026-11-25';
const KEYS: readonly Key['name'][] = ['left', 'right', 'right', 'up', 'down', 'backspace', 'tab'];
const SIZES = [
  { columns: 80, rows: 24 },
  { columns: 40, rows: 24 },
  { columns: 30, rows: 10 },
];
const glyphs = glyphsFor({ LANG: 'C.UTF-8' });

/** What if by chance over homes made up by chance: keys of the view, and pairs of the command. */
export const whatIf: Part = {
  whole: 300,
  of: 'home',
  try(seed, tally) {
    const random = seeded(seed ^ 0x7769);
    const answers = randomHome(seed);
    const name = `home ${seed}`;
    const factsOf = quickPlans(interview, AS_OF, false);
    const now = factsOf({ answers, size: 0 })!;
    const told = JSON.stringify(answers);
    let state: WhatIf = beginWhatIf(interview, answers);
    for (let key = 0; key < 30; key++) {
      const pressed = KEYS[Math.floor(random() * KEYS.length)]! as Exclude<Key['name'], 'text'>;
      state = reduceWhatIf(state, { type: 'key', key: { name: pressed } });
      if (key % 10 !== 9) continue;
      const then = factsOf(triedIn(state));
      met(tally, then === null ? 'no such size' : 'tried by keys');
      if (then === null) continue;
      const said = sayChanges(changesBetween(now, then));
      note(tally, name, 'figures in order', unordered(then));
      note(tally, name, 'sound sentences', unsound(said));
      note(tally, name, 'frames within the window', outside(state, said));
    }
    const pairs = readTried(interview, answers, [randomPair(random)]);
    met(tally, pairs.ok ? 'pair taken' : 'pair refused');
    if (!pairs.ok) note(tally, name, 'a refusal is a sentence', faultsOf(pairs.says));
    note(tally, name, 'the answers stay', JSON.stringify(answers) === told ? [] : ['changed']);
  },
};

function randomPair(random: () => number): string {
  const keys = [...TRIED_KEYS, ...interview.questions.map(({ id }) => id)];
  const values = [
    '48',
    'not sure',
    'larger',
    'none',
    '-1',
    '',
    '\u{1f600}',
    '3 days',
    'both',
    '$1e9',
  ];
  const of = (list: readonly string[]) => list[Math.floor(random() * list.length)]!;
  return `${of(keys)}=${of(values)}`;
}

const faultsOf = (says: string) => (BROKEN.test(says) || !/[.?)]$/.test(says.trim()) ? [says] : []);

function unordered({ usd, lasts, odds }: PlanFacts): string[] {
  const spans: Span[] = [usd, ...(lasts.code === 'hours' ? [lasts.today] : [])];
  const shares = odds === null ? [] : [odds.today, odds.stored ?? 0];
  return [
    ...spans.filter(({ low, likely, high }) => !(low <= likely && likely <= high)),
    ...shares.filter((share) => !(share >= 0 && share < 1)),
  ].map((wrong) => JSON.stringify(wrong));
}

function unsound(said: SaidChanges): string[] {
  const layout = { width: 60, sides: { before: 'Now', after: 'What if' } };
  return (['columns', 'stacked'] as const).flatMap((stand) => {
    const lines = compareLines(said, { ...layout, stand });
    return lines.filter((line) => BROKEN.test(line) || line.length > 60);
  });
}

function outside(state: WhatIf, said: SaidChanges): string[] {
  return SIZES.flatMap((size) => {
    const frame = whatIfFrame({ name: 'oak', state, said, isCurrent: true, size, glyphs });
    const wide = frame.lines.some((line) => lineWidth(line) > size.columns);
    const tall = frame.lines.length > frameHeight(size.rows);
    return wide || tall ? [`${size.columns} x ${size.rows}: ${wide ? 'wide' : 'tall'}`] : [];
  });
}
