import type { Plan } from '../../plan/plan';
import type { Block } from '../document/block';

/** The draft mark, where the plan is one: nobody buys, quotes or relies on it. */
export const draftMark = ({ state }: Plan, says: string): Block[] =>
  state === 'draft' ? [{ kind: 'say', strong: true, text: says }] : [];
