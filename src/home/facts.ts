import type { Answer } from '../interview/answers';
import type { Resolved } from '../interview/resolve';

/**
 * What the household told us, question by question, and what we assume where it did not.
 * A question that does not apply to this home has no value at all; one that applies but may not be
 * guessed has the value null. Rules ask `open` to take the careful branch.
 */
export class Facts {
  constructor(private readonly known: Resolved) {}

  /** The question applies to this home. */
  applies(id: string): boolean {
    return this.known.has(id);
  }

  /** The household answered it (not "not sure", not unasked). */
  told(id: string): boolean {
    return this.known.get(id)?.how === 'told';
  }

  /** It applies and we do not know it: "not sure", or never asked. */
  open(id: string): boolean {
    const at = this.known.get(id);
    return at !== undefined && at.how !== 'told';
  }

  /** The answer, told or assumed. Null: unknown, or the question does not apply. */
  value(id: string): Answer | null {
    return this.known.get(id)?.value ?? null;
  }

  /** The single choice is one of these, told or assumed. */
  is(id: string, ...choices: string[]): boolean {
    const value = this.value(id);
    return typeof value === 'string' && choices.includes(value);
  }

  /** The ticked choices hold one of these, told or assumed. */
  has(id: string, ...choices: string[]): boolean {
    return this.list(id).some((one) => choices.includes(one));
  }

  /** The ticked choices; empty when unknown or when the question does not apply. */
  list(id: string): readonly string[] {
    const value = this.value(id);
    return Array.isArray(value) ? value.filter((one) => typeof one === 'string') : [];
  }

  /** The numbers typed in one line, in the question's unit. Null: unknown, or does not apply. */
  numbers(id: string): readonly number[] | null {
    const value = this.value(id);
    if (value === null || typeof value !== 'object') return null;
    const numbers = value.filter((one) => typeof one === 'number');
    return numbers.length === value.length ? numbers : null;
  }

  /** The number in the question's unit, told or assumed. Null: unknown, or does not apply. */
  number(id: string): number | null {
    const value = this.value(id);
    return typeof value === 'number' ? value : null;
  }

  /** Ids that apply and are unknown, in asking order. */
  openIds(): string[] {
    return [...this.known.keys()].filter((id) => this.open(id));
  }

  /** Ids that apply, in asking order. */
  ids(): string[] {
    return [...this.known.keys()];
  }
}
