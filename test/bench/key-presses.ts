import type { Answer } from '../../src/interview/answers';
import { NOT_SURE } from '../../src/interview/answers';
import { holds } from '../../src/interview/questions/holds';
import type { Question } from '../../src/interview/questions/question';
import type { Resolved } from '../../src/interview/questions/resolve';

/**
 * Keys that give an answer on the screen: what is typed, or the number of each line with Space where several are ticked, then
 * Enter; "not sure" is one key. A number asked back and what is moved through are not counted.
 */
export function keyPresses({ kind, choices }: Question, answer: Answer, known: Resolved): number {
  if (answer === NOT_SURE) return 1;
  const given = [answer].flat().map(String);
  if (choices === undefined) return given.join(' ').length + 1;
  const lines = choices.filter(({ when }) => when === undefined || holds(when, known));
  const space = kind === 'choices' ? 1 : 0;
  const keys = given.map(
    (id) => String(lines.findIndex((one) => one.id === id) + 1).length + space,
  );
  return keys.reduce((sum, some) => sum + some, 1);
}
