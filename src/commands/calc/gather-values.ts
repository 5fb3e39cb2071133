import type { Tariff } from '../../bill/tariff/tariff';
import type { Calculation, Input } from './calculation';
import { readInput } from './read-input';
import { type Value, Values } from './values';

/** An input as understood, and whether somebody gave it. */
export interface Understood {
  readonly input: Input;
  readonly value: Value;
  readonly given: boolean;
}

export type Gathered =
  | { readonly ok: true; readonly values: Values; readonly understood: readonly Understood[] }
  | { readonly ok: false; readonly says: string };

/** Inputs of a computation from the pairs given: unknown, missing and unreadable ones each have their sentence. */
export function gatherValues(
  calculation: Calculation,
  pairs: ReadonlyMap<string, string>,
  ownTariff: Tariff | null = null,
): Gathered {
  const known = calculation.inputs.map((input) => input.key);
  const stranger = [...pairs.keys()].find((key) => !known.includes(key));
  if (stranger !== undefined) {
    return {
      ok: false,
      says: `${calculation.name} has no input "${stranger}". It takes ${known.join(', ')}.`,
    };
  }
  const understood: Understood[] = [];
  const missing: string[] = [];
  for (const input of calculation.inputs) {
    const text = pairs.get(input.key);
    if (text !== undefined) {
      const read = readInput(input, text);
      if (!read.ok) return read;
      understood.push({ input, value: read.value, given: true });
    } else if ('assumed' in input && input.assumed !== undefined) {
      understood.push({ input, value: input.assumed, given: false });
    } else if (!input.optional) missing.push(input.key);
  }
  if (missing.length > 0) {
    return { ok: false, says: `${calculation.name} also needs ${missing.join(' and ')}.` };
  }
  const byKey = new Map(understood.map(({ input, value }) => [input.key, value]));
  return { ok: true, values: new Values(byKey, ownTariff), understood };
}
