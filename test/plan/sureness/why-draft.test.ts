import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { contradictions } from '../../../src/plan/contradictions';
import { whyDraft } from '../../../src/plan/sureness/why-draft';
import {
  sayDraftReason,
  sayDraftReasonShort,
} from '../../../src/words/en/sureness/say-draft-reason';
import { answersOf } from '../../households/read-household';
import { answeredHome } from '../../rules/some-home';

const all = answersOf('tower-six');
const reasons = (changed: Record<string, string | number | string[]>) => {
  const answers = { ...all, ...changed };
  const home = answeredHome(answers);
  return whyDraft(home, interview, contradictions(home, answers));
};

describe('why a plan stays a draft', () => {
  test('nothing keeps one with all answers a draft', () => {
    expect(reasons({})).toEqual([]);
  });

  test('two answers that do not fit together do, whatever else is told', () => {
    const found = reasons({ 'own-sources': ['engine-portable'], operators: 'none' });
    expect(found[0]).toEqual({ id: 'to-settle', pairs: 1 });
    expect(sayDraftReason(found[0]!)).toContain('settle this first');
  });

  test('each has words for the details and short ones for the first page', () => {
    const found = reasons({ 'must-run': 'not sure', 'medical-devices': 'not sure' });
    expect(found.map((why) => why.id)).toEqual(
      expect.arrayContaining(['life-unknown', 'open-answers']),
    );
    const open = found.find((why) => why.id === 'open-answers')!;
    expect(sayDraftReasonShort(open)).toMatch(/^2 of the \d\d main answers are open$/);
    const must = interview.questions.find((one) => one.id === 'must-run')!;
    expect(sayDraftReason(open)).toContain(must.ask);
  });
});
