import interview from '#compiled/questions.js';
import { planJsonSchema } from '../plan/plan-schema';
import { homeJsonSchema } from '../store/home-schema';
import { DONE, WRONG_USAGE } from './exit-codes';
import type { Arguments } from './read-arguments';

/** `lampkeeper schema home|plan`: the JSON Schema of the two files, so that an editor can help. */
export function schemaCommand(args: Arguments): number {
  const [which] = args.rest;
  if (which !== 'home' && which !== 'plan') {
    process.stderr.write('schema takes "home" or "plan": lampkeeper schema home\n');
    return WRONG_USAGE;
  }
  const schema = which === 'home' ? homeJsonSchema(interview) : planJsonSchema();
  process.stdout.write(`${JSON.stringify(schema, null, 2)}\n`);
  return DONE;
}
