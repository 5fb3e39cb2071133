import type { Plan } from '../../../plan/plan';
import { bullets } from '../../markdown/bullets';

/** A danger told while the plan was made comes before anything planned. */
export function danger({ danger }: Plan): string[] {
  if (danger === null) return [];
  return [
    `**Danger now. You told us: ${danger.told.map(({ says }) => says[0]!.toLowerCase() + says.slice(1)).join('; ')}. Do this before you read on:**`,
    bullets(danger.steps),
  ];
}
