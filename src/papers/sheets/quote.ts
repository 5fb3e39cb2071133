import type { Plan } from '../../plan/plan';
import type { Words } from '../../words/words';
import { type Block, section } from '../document/block';
import { diagramOf } from '../pictures/of-plan/diagram-of';
import type { Sheet } from './sheet';

/** The sheet an electrician quotes from; it names no person, no illness and no money. */
export function quoteSheet(plan: Plan, words: Words): Sheet {
  const { scope, service } = plan.electrical;
  const say = (text: string): Block => ({ sort: 'say', text });
  const diagram = diagramOf(plan, words);
  return {
    id: 'quote',
    title: words.sheets.quote.title,
    purpose: words.sheets.quote.purpose,
    blocks: [
      ...(plan.state === 'draft' ? [say(words.sheets.shared.draftForStranger)] : []),
      { sort: 'blanks', names: words.sheets.quote.household },
      say(scope.purpose),
      ...(diagram === null
        ? [say(words.sheets.quote.noWiring)]
        : [{ sort: 'picture', picture: diagram } as const]),
      ...section(words.sheets.quote.circuits, {
        sort: 'table',
        head: words.sheets.quote.circuitHead,
        rows: scope.circuits.map((one) => [
          one.rank === 'must' ? one.name : words.sheets.quote.optional(one.name),
          String(one.volts),
          one.watts,
          one.startVa,
          one.how,
        ]),
      }),
      ...section(words.sheets.quote.service, {
        sort: 'table',
        head: words.sheets.quote.serviceHead,
        rows: service.map((fact) => [fact.what, fact.value, fact.how]),
      }),
      ...section(words.sheets.quote.requirements, { sort: 'boxes', items: scope.requirements }),
      ...section(words.sheets.quote.points, { sort: 'boxes', items: scope.quotePoints }),
      ...section(words.sheets.quote.siteQuestions, { sort: 'boxes', items: scope.siteQuestions }),
      say(scope.confirmLocally),
      ...section(words.sheets.quote.price, {
        sort: 'blanks',
        names: words.sheets.quote.priceLines,
      }),
    ],
  };
}
