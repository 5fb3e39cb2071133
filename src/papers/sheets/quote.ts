import type { ScopeCircuit } from '../../plan/electrical/scope';
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
      say(words.forElectrician.purpose(scope.purpose)),
      ...(diagram === null
        ? [say(words.sheets.quote.noWiring)]
        : [{ sort: 'picture', picture: diagram } as const]),
      ...section(words.sheets.quote.circuits, {
        sort: 'table',
        head: words.sheets.quote.circuitHead,
        rows: scope.circuits.map((one) => circuitRow(one, words)),
      }),
      ...section(words.sheets.quote.service, {
        sort: 'table',
        head: words.sheets.quote.serviceHead,
        rows: service.map((fact) => {
          const { what, value, how } = words.forElectrician.serviceFact(fact);
          return [what, value, how];
        }),
      }),
      ...section(words.sheets.quote.requirements, {
        sort: 'boxes',
        items: scope.requirements.map(words.forElectrician.requirement),
      }),
      ...section(words.sheets.quote.points, {
        sort: 'boxes',
        items: scope.quotePoints.map(words.forElectrician.quotePoint),
      }),
      ...section(words.sheets.quote.siteQuestions, {
        sort: 'boxes',
        items: scope.siteQuestions.map(words.forElectrician.siteQuestion),
      }),
      say(words.forElectrician.confirmLocally),
      ...section(words.sheets.quote.price, {
        sort: 'blanks',
        names: words.sheets.quote.priceLines,
      }),
    ],
  };
}

function circuitRow(circuit: ScopeCircuit, words: Words): string[] {
  const { name, watts, startVa } = words.forElectrician.circuit(circuit);
  const called = circuit.rank === 'must' ? name : words.sheets.quote.optional(name);
  return [called, String(circuit.volts), watts, startVa, circuit.how];
}
