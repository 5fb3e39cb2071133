import * as z from 'zod';
import { NOT_SURE } from '../interview/answers';
import type { Interview, Question } from '../interview/questions/question';
import { sayUnit } from '../interview/words';
import { HOME_KEY, HOME_VERSION, TARIFF_BLOCK, UNFINISHED_KEY } from './home-file';

/** The form of a home file, question by question with its wording and unit. `tariff` is the form of its tariff. */
export function homeSchema(interview: Interview, tariff: z.ZodType = z.unknown()) {
  const answers = Object.fromEntries(
    interview.questions.map((question) => [question.id, answerSchema(question).optional()]),
  );
  // Keys of its owner are kept and mean nothing to us.
  return z.looseObject({
    [HOME_KEY]: z.literal(HOME_VERSION).describe('Form of this file.'),
    asOf: z
      .string()
      .regex(/^\d{4}-\d{2}-\d{2}$/)
      .describe('Day from which ages are counted, YYYY-MM-DD.')
      .optional(),
    [TARIFF_BLOCK]: tariff
      .optional()
      .describe("The household's own tariff, which goes before all answers about prices."),
    answers: z
      .strictObject(answers)
      .describe('Answers by question. What is missing counts as "not sure".'),
    [UNFINISHED_KEY]: z
      .record(z.string(), z.union([z.string(), z.array(z.string())]))
      .describe('Typed or ticked and not entered yet. No answers: the plan does not count them.')
      .optional(),
  });
}

/** The same as JSON Schema, for editors. */
export function homeJsonSchema(interview: Interview, tariff?: z.ZodType): unknown {
  return z.toJSONSchema(homeSchema(interview, tariff), { target: 'draft-2020-12' });
}

function answerSchema(question: Question) {
  const notSure = z.literal(NOT_SURE);
  const about = { title: question.says, description: describe(question) };
  switch (question.kind) {
    case 'choice':
      return z.union([choice(question), notSure]).meta(about);
    case 'choices':
      return z.union([z.array(choice(question)).min(1), notSure]).meta(about);
    case 'number':
      return z
        .union([z.number(), z.string()])
        .meta({ ...about, unit: question.unit, possible: question.possible });
    case 'numbers': {
      const [low, high] = question.possible!;
      const list = z.array(z.number().min(low).max(high)).length(question.count!);
      return z.union([list, z.string()]).meta({ ...about, unit: question.unit });
    }
    case 'text':
      return z.string().max(question.longest!).meta(about);
    default:
      return z.string().meta(about);
  }
}

function choice(question: Question) {
  const ids = question.choices!.map((one) => one.id) as [string, ...string[]];
  return z.enum(ids);
}

function describe(question: Question): string {
  const lines = [question.ask, `Hint: ${question.hint}.`];
  if (question.unit !== undefined) {
    const [low, high] = question.possible!;
    const unit = sayUnit(question.unit);
    lines.push(
      question.count === undefined
        ? `In ${unit}, ${low} to ${high}, with its unit: "${low} ${question.unit}", or "${NOT_SURE}".`
        : `A list of ${question.count} numbers in ${unit}, each ${low} to ${high}, or "${NOT_SURE}".`,
    );
  }
  if (question.choices !== undefined) {
    lines.push(question.choices.map((one) => `${one.id}: ${one.label}`).join('; '));
  }
  lines.push(`Not sure: ${question.unsure.because}`);
  return lines.join(' ');
}
