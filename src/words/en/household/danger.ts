import { lowerFirst } from '../lower-first';

/** A danger told while the plan was made. */
export const sayDanger = (told: readonly string[]): string =>
  `Danger now. You told us: ${told.map(lowerFirst).join('; ')}. Do this before you read on:`;
