import fc from 'fast-check';
import interview from '#compiled/questions.js';
import type { Answer, Answers } from '../../src/interview/answers';
import { NOT_SURE } from '../../src/interview/answers';
import type { Question } from '../../src/interview/questions/question';
import { type RouteKind, routeKinds } from '../../src/kinds/route-kind';

/** Any answers to the real questions: some told, some "not sure", some never asked. */
export const anyAnswers: fc.Arbitrary<Answers> = fc
  .record(Object.fromEntries(interview.questions.map((q) => [q.id, anyAnswer(q)])), {
    requiredKeys: [],
  })
  .map((answers) => ({ ...answers }) as Answers);

/** Any routes under discussion. */
export const anyKinds: fc.Arbitrary<RouteKind[]> = fc.subarray([...routeKinds]);

function anyAnswer(question: Question): fc.Arbitrary<Answer> {
  return fc.oneof(
    { weight: 1, arbitrary: fc.constant(NOT_SURE) },
    { weight: 4, arbitrary: told(question) },
  );
}

function told(question: Question): fc.Arbitrary<Answer> {
  const ids = (question.choices ?? []).map((c) => c.id);
  if (question.kind === 'choice') return fc.constantFrom(...ids);
  if (question.kind === 'choices') return ticked(question, ids);
  if (question.kind === 'zip') return fc.constantFrom('94110', '48911', '70364', '55731');
  if (question.kind === 'name') return fc.constant('any-home');
  if (question.kind === 'text') return fc.constant('No generator may run outdoors.');
  const [low, high] = question.possible!;
  if (question.kind === 'numbers') {
    const one = fc.double({ min: low, max: high, noNaN: true }).map(Math.round);
    return fc.array(one, { minLength: question.count!, maxLength: question.count! });
  }
  return fc.double({ min: low, max: high, noNaN: true }).map((n) => Math.round(n * 10) / 10);
}

/** One choice that stands alone, or some of the others. */
function ticked(question: Question, ids: string[]): fc.Arbitrary<Answer> {
  const alone = (question.choices ?? []).filter((c) => c.alone).map((c) => c.id);
  const others = fc.subarray(
    ids.filter((id) => !alone.includes(id)),
    { minLength: 1 },
  );
  return alone.length > 0
    ? fc.oneof(
        fc.constantFrom(...alone).map((id) => [id]),
        others,
      )
    : others;
}
