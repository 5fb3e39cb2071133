import interview from '#compiled/questions.js';
import { tariffJsonSchema, tariffSchema } from '../bill/tariff/tariff-schema';
import { planJsonSchema } from '../papers/plan-file/plan-schema';
import { homeJsonSchema } from '../store/home-schema';
import { quoteJsonSchema } from '../store/quote-schema';
import { DONE, WRONG_USAGE } from './exit-codes';
import { printErr, printOut } from './print';
import type { Arguments } from './read-arguments';

const schemas: Readonly<Record<string, () => unknown>> = {
  home: () => homeJsonSchema(interview, tariffSchema),
  plan: planJsonSchema,
  tariff: tariffJsonSchema,
  quote: quoteJsonSchema,
};

/** `lampkeeper schema home|plan|tariff|quote`: the JSON Schema of the files, so that an editor can help. */
export function schemaCommand(args: Arguments): number {
  const which = args.rest[0] ?? '';
  if (!Object.hasOwn(schemas, which)) {
    printErr('schema takes "home", "plan", "tariff" or "quote": lampkeeper schema home\n');
    return WRONG_USAGE;
  }
  printOut(`${JSON.stringify(schemas[which]!(), null, 2)}\n`);
  return DONE;
}
