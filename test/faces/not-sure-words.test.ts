import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { showDraft } from '../../src/commands/talk/show-draft';
import { printView } from '../../src/faces/lines/print-view';
import { planSoFar, planSoFarTitle } from '../../src/faces/plan-so-far';
import { unsureWords } from '../../src/faces/unsure-words';
import { type Answers, NOT_SURE } from '../../src/interview/answers';
import { begin, show } from '../../src/interview/begin';
import { offered, questionAt } from '../../src/interview/questions/relevant';
import { reduce } from '../../src/interview/reduce';
import type { Context, State } from '../../src/interview/state';
import { draftMaker } from '../../src/plan/draft/draft-of';

const context: Context = {
  interview,
  short: true,
  nameProblem: () => null,
  spareName: () => 'a',
};
const flat: Answers = {
  'now-danger': ['none'],
  'home-name': 'kim',
  'home-zip': '60614',
  'home-kind': 'apartment',
  'home-tenure': 'rent',
  'heat-main': 'gas-furnace',
};
const draftOf = (answers: Answers) => showDraft(draftMaker(interview)(answers));
const at = (answers: Answers): State => ({ ...begin(context, {}), answers });

test('"not sure" names only what this home can have', () => {
  const question = questionAt(context, 'must-run');
  const state = show(context, at(flat), 'must-run');
  const can = offered(context, state, question);
  const cannot = (question.choices ?? []).filter((one) => !can.includes(one));
  expect(cannot.length).toBeGreaterThan(0);
  const { notice } = reduce(context, state, { type: 'act', act: 'not-sure' });
  const help = unsureWords(context, state, question);
  for (const text of [notice, help]) {
    expect(text).toContain('Refrigerator');
    for (const { label } of cannot) expect(text).not.toContain(label);
  }
});

test('where the opening ends and nothing can be advised, it says so and names the answer that decides', () => {
  const answers = { ...flat, 'must-run': NOT_SURE };
  const draft = draftOf(answers);
  const state: State = { ...at(answers), view: 'first-plan' };
  const title = planSoFarTitle(context, state, draft);
  expect(title).toMatch(/^No plan yet/);
  expect(printView(context, state, new Set(), draft)[0]).toBe(title);
  const says = planSoFar(context, state, draft).join(' ');
  expect(says).toContain(
    'This answer decides: Must keep running. Once you know it, choose "Look at my answers" below.',
  );
  expect(says).not.toContain('stands here once');
  const told = draftOf({ ...flat, 'must-run': ['fridge'], 'battery-place': 'living-space' });
  expect(planSoFarTitle(context, state, told)).toMatch(/^A first plan/);
});

test('where the questions end and what must run is still not sure, it says that there is no plan, and names the answer', () => {
  const answers = { ...flat, 'must-run': NOT_SURE };
  const next = { code: 'enough', sharpen: 3, again: [] } as const;
  const state: State = { ...at(answers), view: 'enough', next };
  const draft = draftOf(answers);
  expect(planSoFarTitle(context, state, draft)).toMatch(/^Still no plan/);
  expect(planSoFar(context, state, draft).join(' ')).toContain(
    'This answer decides: Must keep running.',
  );
  const told = draftOf({ ...flat, 'must-run': ['fridge'], 'battery-place': 'living-space' });
  expect(planSoFarTitle(context, state, told)).toMatch(/^Nothing we could still ask/);
});

test('where nothing can be advised yet, a device that life hangs on is told of all the same, and first', () => {
  const station = (devices: Answers) => {
    const answers = { ...flat, 'must-run': NOT_SURE, ...devices };
    const state: State = { ...at(answers), view: 'first-plan' };
    return planSoFar(context, state, draftOf(answers));
  };
  const [first] = station({ 'medical-devices': ['ventilator'] });
  expect(first).toMatch(/^Someone here depends on a powered device\. Do not wait for a plan: call/);
  expect(station({ 'medical-devices': NOT_SURE })[0]).toMatch(/^Someone here may depend/);
  expect(station({ 'medical-devices': ['none'] }).join(' ')).not.toContain('powered device');
});

test('where nobody knows who could run a generator by hand, nobody is counted on', () => {
  const state = show(context, at(flat), 'operators');
  const { notice } = reduce(context, state, { type: 'act', act: 'not-sure' });
  expect(notice).toContain('we take nothing for granted');
  expect(notice).not.toContain('One could');
});
