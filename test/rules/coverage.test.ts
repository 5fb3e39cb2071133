import { describe, expect, it } from 'vitest';
import interview from '#compiled/questions.js';
import { rules } from '../../src/rules';
import { correctedCover } from './coverage-corrected';
import { failingCover } from './coverage-failing';
import { lifeCover } from './coverage-life';
import { saidCover } from './coverage-said';
import { unknownCover } from './coverage-unknown';

const lists = { lifeCover, failingCover, saidCover, unknownCover, correctedCover };
const all = Object.values(lists).flat();
const ruleIds = new Set(rules.map((rule) => rule.id));
const questionIds = new Set(interview.questions.map((q) => q.id));

describe('every known hazard is taken care of', () => {
  it.each(Object.entries(lists))('%s names rules that exist', (_list, covers) => {
    const strays = covers.flatMap((one) => one.rules ?? []).filter((id) => !ruleIds.has(id));
    expect(strays).toEqual([]);
  });

  it('names questions that exist', () => {
    expect(all.flatMap((one) => one.asks ?? []).filter((id) => !questionIds.has(id))).toEqual([]);
  });

  it('gives a rule, or else a reason', () => {
    const bare = all.filter((one) => !one.rules?.length && !one.reason);
    expect(bare.map((one) => one.hazard)).toEqual([]);
  });

  it('leaves few hazards to a reason alone', () => {
    expect(all.filter((one) => !one.rules && !one.asks).length).toBeLessThan(all.length / 10);
  });
});
