import type { Tariff } from '../bill/tariff/tariff';
import type { Later } from '../faces/door';
import type { Keeping } from './keeping';
import { weighApart } from './weigh-apart';

/** Keeping and weighing apart from the keys, for the screen. */
export function laterApart(keeping: Keeping, tariff: Tariff | null, asOf: string): Later {
  return {
    save: (answers, unfinished) => keeping.save(answers, unfinished),
    weigh: () => {
      throw new Error('weighed in a thread of its own');
    },
    apart: weighApart(tariff, asOf),
  };
}

/** The same in one piece, line by line. Sums are made ready at the first weighing, so that keeping waits for nothing. */
export async function laterInOne(
  keeping: Keeping,
  tariff: Tariff | null,
  asOf: string,
): Promise<Later> {
  const { weighAll } = await import('./weigh-all');
  let all: ReturnType<typeof weighAll> | null = null;
  const ready = () => {
    all ??= weighAll(tariff, asOf);
    return all;
  };
  return {
    save: (answers, unfinished) => keeping.save(answers, unfinished),
    weigh: (answers) => ready().weigh(answers),
    next: (answers) => ready().next(answers),
  };
}
