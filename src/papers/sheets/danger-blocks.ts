import type { Plan } from '../../plan/plan';
import type { Words } from '../../words/words';
import type { Block } from '../document/block';

/** A danger told while the plan was made stands before everything on every sheet of the household. */
export function dangerBlocks({ danger }: Plan, words: Words): Block[] {
  if (danger === null) return [];
  return [
    {
      kind: 'say',
      strong: true,
      text: words.sheets.shared.dangerTold(
        danger.told.map(({ says }) => words.inSentence(says)).join('; '),
      ),
    },
    { kind: 'steps', items: danger.steps },
  ];
}
