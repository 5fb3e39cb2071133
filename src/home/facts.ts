import type { ChoiceId, QuestionId } from '#compiled/question-ids.js';
import type { Answer } from '../interview/answers';
import type { Resolved } from '../interview/questions/resolve';

/**
 * What the household told us, question by question, and what we assume where it did not.
 * A question that does not apply to this home has no value at all; one that applies but may not be
 * guessed has the value null. Rules ask `open` to take the careful branch.
 */
export class Facts {
  constructor(private readonly known: Resolved) {}

  /** The question applies to this home. */
  applies(id: QuestionId): boolean {
    return this.known.has(id);
  }

  /** The household answered it (not "not sure", not unasked). */
  told(id: QuestionId): boolean {
    return this.known.get(id)?.how === 'told';
  }

  /** The same with some answers as if they had been told: to weigh what another answer would change. */
  asIfTold(answers: ReadonlyMap<string, Answer>): Facts {
    const known = new Map(this.known);
    for (const [id, value] of answers) known.set(id, { value, how: 'told' });
    return new Facts(known);
  }

  /** The household met it: told, or "not sure". A question that does not apply was not. */
  asked(id: QuestionId): boolean {
    const how = this.known.get(id)?.how;
    return how === 'told' || how === 'unsure';
  }

  /** It applies and we do not know it: "not sure", or never asked. */
  open(id: QuestionId): boolean {
    const at = this.known.get(id);
    return at !== undefined && at.how !== 'told';
  }

  /** The answer, told or assumed. Null: unknown, or the question does not apply. */
  value(id: QuestionId): Answer | null {
    return this.known.get(id)?.value ?? null;
  }

  /** The single choice is one of these, told or assumed. */
  is<Q extends QuestionId>(id: Q, ...choices: readonly ChoiceId<Q>[]): boolean {
    const value = this.value(id);
    return typeof value === 'string' && (choices as readonly string[]).includes(value);
  }

  /** The ticked choices hold one of these, told or assumed. */
  has<Q extends QuestionId>(id: Q, ...choices: readonly ChoiceId<Q>[]): boolean {
    return this.list(id).some((one) => (choices as readonly string[]).includes(one));
  }

  /** The ticked choices; empty when unknown or when the question does not apply. */
  list(id: QuestionId): readonly string[] {
    const value = this.value(id);
    return Array.isArray(value) ? value.filter((one) => typeof one === 'string') : [];
  }

  /** The same by the ids of the question's choices. */
  choices<Q extends QuestionId>(id: Q): readonly ChoiceId<Q>[] {
    return this.list(id) as readonly ChoiceId<Q>[];
  }

  /** The single choice, told or assumed. Null: unknown, or does not apply. */
  choice<Q extends QuestionId>(id: Q): ChoiceId<Q> | null {
    const value = this.value(id);
    return typeof value === 'string' ? (value as ChoiceId<Q>) : null;
  }

  /** What was typed as a text, to be said back and never read. Null: unknown, or does not apply. */
  text(id: QuestionId): string | null {
    const value = this.told(id) ? this.value(id) : null;
    return typeof value === 'string' ? value : null;
  }

  /** The numbers typed in one line, in the question's unit. Null: unknown, or does not apply. */
  numbers(id: QuestionId): readonly number[] | null {
    const value = this.value(id);
    if (value === null || typeof value !== 'object') return null;
    const numbers = value.filter((one) => typeof one === 'number');
    return numbers.length === value.length ? numbers : null;
  }

  /** The number in the question's unit, told or assumed. Null: unknown, or does not apply. */
  number(id: QuestionId): number | null {
    const value = this.value(id);
    return typeof value === 'number' ? value : null;
  }

  /** Ids that apply and are unknown, in asking order. */
  openIds(): QuestionId[] {
    return this.ids().filter((id) => this.open(id));
  }

  /** Ids that apply, in asking order. */
  ids(): QuestionId[] {
    return [...this.known.keys()] as QuestionId[];
  }
}
