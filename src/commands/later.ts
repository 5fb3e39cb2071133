import type { Tariff } from '../bill/tariff/tariff';
import type { Later } from '../faces/door';
import { draftApart } from './draft-apart';
import type { Keeping } from './keeping';

/** Keeping and weighing apart from the keys, for the screen. */
export function laterApart(keeping: Keeping, tariff: Tariff | null, asOf: string): Later {
  return {
    save: (answers, unfinished) => keeping.save(answers, unfinished),
    draftOf: () => {
      throw new Error('weighed in a thread of its own');
    },
    apart: draftApart(tariff, asOf),
  };
}

/** The same in one piece, line by line. Sums are made ready at the first weighing, so that keeping waits for nothing. */
export async function laterInOne(
  keeping: Keeping,
  tariff: Tariff | null,
  asOf: string,
): Promise<Later> {
  const { draftAll } = await import('./draft-all');
  let all: ReturnType<typeof draftAll> | null = null;
  const ready = () => {
    all ??= draftAll(tariff, asOf);
    return all;
  };
  return {
    save: (answers, unfinished) => keeping.save(answers, unfinished),
    draftOf: (answers) => ready().draftOf(answers),
    next: (answers) => ready().next(answers),
  };
}
