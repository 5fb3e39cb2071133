import type { Tariff } from '../../bill/tariff/tariff';
import type { Later, WhatIfApart } from '../../faces/door';
import { draftApart } from './draft-apart';
import type { Keeping } from './keeping';
import type { WhatIfAll } from './what-if-all';
import { whatIfApart } from './what-if-apart';

/** Keeping and weighing apart from the keys, for the screen. */
export function laterApart(keeping: Keeping, tariff: Tariff | null, asOf: string): Later {
  return {
    save: (answers, unfinished) => keeping.save(answers, unfinished),
    draftOf: () => {
      throw new Error('weighed in a thread of its own');
    },
    apart: draftApart(tariff, asOf),
    whatIf: whatIfApart(tariff, asOf),
  };
}

/** What if in one piece; its sums are loaded at the first look. */
export function whatIfInOne(tariff: Tariff | null, asOf: string): WhatIfApart {
  let all: Promise<WhatIfAll> | null = null;
  return {
    look(answers, tried, found) {
      all ??= import('./what-if-all').then((loaded) => loaded.whatIfAll(tariff, asOf));
      void all.then((of) => found(of(answers, tried)));
    },
    close() {},
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
    whatIf: whatIfInOne(tariff, asOf),
  };
}
