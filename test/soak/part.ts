/** What a run has met: how often each thing held spoke, and what was wrong. */
export interface Tally {
  /** Seed, what was held, and how it was broken: enough to see it again. */
  readonly faults: string[];
  /** By name, how often something was met or held. */
  readonly spoke: Record<string, number>;
}

/** One part of the soak: tries by number, each the same whenever it is run. */
export interface Part {
  /** How many tries a whole run has. */
  readonly whole: number;
  /** What one try is. */
  readonly of: string;
  /** Try the one of this seed, 1 and up, and take down what was wrong. What it throws is a fault too. */
  try(seed: number, tally: Tally): void | Promise<void>;
  /** The same with less behind it, where a hundredth of the whole is still too much for a test. */
  light?(seed: number, tally: Tally): void | Promise<void>;
}

export const emptyTally = (): Tally => ({ faults: [], spoke: {} });

export function met(tally: Tally, what: string, count = 1): void {
  tally.spoke[what] = (tally.spoke[what] ?? 0) + count;
}

/** Count one look at something held, and take down each way in which it was broken. */
export function note(tally: Tally, name: string, what: string, wrong: readonly string[]): void {
  met(tally, what);
  for (const says of wrong) tally.faults.push(`${name}: ${what}: ${says}`);
}

/** Run one try of a part, a throw being a fault of its seed. */
export async function tryPart(
  part: Part,
  seed: number,
  tally: Tally,
  how: 'whole' | 'light' = 'whole',
): Promise<void> {
  try {
    if (how === 'light' && part.light !== undefined) await part.light(seed, tally);
    else await part.try(seed, tally);
  } catch (thrown) {
    tally.faults.push(`${part.of} ${seed}: throws: ${(thrown as Error).stack ?? thrown}`);
  }
}
