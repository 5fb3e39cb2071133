import type { Answers } from './answers';
import type { Interview, PrivateKind } from './questions/question';

export const PRIVATE_KINDS: readonly PrivateKind[] = ['name', 'people', 'place', 'money'];

/** Ids of the answers that are private, by kind, in asking order. */
export function privateIn(
  interview: Interview,
  answers: Answers,
): Readonly<Record<PrivateKind, readonly string[]>> {
  const told = (kind: PrivateKind) =>
    interview.private[kind].filter((id) => answers[id] !== undefined);
  return { name: told('name'), people: told('people'), place: told('place'), money: told('money') };
}

/** The answers without those that are private. */
export function withoutPrivate(interview: Interview, answers: Answers): Answers {
  const gone = new Set(PRIVATE_KINDS.flatMap((kind) => interview.private[kind]));
  return Object.fromEntries(Object.entries(answers).filter(([id]) => !gone.has(id)));
}
