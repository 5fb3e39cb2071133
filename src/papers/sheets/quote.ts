import { hasFixedBattery } from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import type { ScopeCircuit } from '../../plan/electrical/scope';
import type { ServiceFact } from '../../plan/electrical/service-facts';
import type { Plan } from '../../plan/plan';
import { sayRule } from '../../words/rule-sentences';
import type { Words } from '../../words/words';
import { type Block, section } from '../document/block';
import { diagramOf } from '../pictures/of-plan/diagram-of';
import { draftMark } from './draft-mark';
import type { Sheet } from './sheet';

/** The sheet an electrician quotes from; it names no person, no illness and no money. */
export function quoteSheet(plan: Plan, words: Words): Sheet {
  const { scope, service } = plan.electrical;
  const say = (text: string): Block => ({ kind: 'say', text });
  const diagram = diagramOf(plan, words);
  const toQuote = plan.electricianFor === 'route';
  return {
    id: 'quote',
    title: words.sheets.quote.title,
    purpose: `${words.sheets.quote.purpose} ${words.forElectrician.purpose(scope.purpose)}`,
    blocks: [
      ...draftMark(plan, words.sheets.shared.draftForStranger),
      { kind: 'blanks', names: words.sheets.quote.household },
      ...(toQuote ? [] : [say(words.sheets.quote.noWiring)]),
      ...(diagram === null ? [] : [{ kind: 'picture', picture: diagram } as const]),
      ...(toQuote ? circuits(scope.circuits, words) : homeAsItIs(plan, words)),
      ...section(words.sheets.quote.service, {
        kind: 'say',
        text: found(service, words).join(' '),
      }),
      ...section(words.sheets.quote.requirements, {
        kind: 'boxes',
        items: scope.requirements.map(words.forElectrician.requirement),
      }),
      ...section(words.sheets.quote.points, {
        kind: 'boxes',
        items: scope.quotePoints.map(words.forElectrician.quotePoint),
      }),
      ...section(words.sheets.quote.siteQuestions, {
        kind: 'boxes',
        items: [
          ...scope.siteQuestions.map(words.forElectrician.siteQuestion),
          words.forElectrician.confirmHere(touches(plan)),
        ],
      }),
      ...section(words.sheets.quote.price, {
        kind: 'blanks',
        names: toQuote ? words.sheets.quote.priceLines : words.sheets.quote.priceOfWork,
      }),
    ],
  };
}

/** Where nothing is wired: what an electrician has to look at in the home as it is, said to the electrician. */
const homeAsItIs = ({ electrician }: Plan, words: Words): Block[] =>
  section(words.sheets.quote.homeAsItIs, {
    kind: 'boxes',
    items: electrician.flatMap((point) =>
      point.code === 'caution'
        ? [words.sheets.askedOfElectrician[point.id] ?? sayRule(words.rules, point)]
        : [],
    ),
  });

function circuits(all: readonly ScopeCircuit[], words: Words): Block[] {
  const its = words.sheets.quote;
  const rows = all.map((circuit) => {
    const { name, watts, startVa, known } = words.forElectrician.circuitShort(circuit);
    const called = circuit.rank === 'must' ? name : its.optional(name);
    return [called, String(circuit.volts), watts, startVa, known];
  });
  const optional = all.some(({ rank }) => rank === 'optional');
  return section(optional ? its.circuitsWithOptional : its.circuits, {
    kind: 'table',
    head: its.circuitHead,
    rows,
  });
}

const ways = ['told', 'assumed', 'not-known'] as const;

/** The service as found, by how each fact is known. */
function found(service: readonly ServiceFact[], words: Words): string[] {
  return ways.flatMap((way) => {
    const facts = service.filter(({ how }) => how === way);
    return facts.length === 0 ? [] : [words.forElectrician.serviceTogether(facts, way)];
  });
}

/** What of the codes touches this home with this route. */
function touches({ advice: { route }, home: { facts } }: Plan) {
  const of = traitsOf[route.kind];
  const solar = of.roofSolar || (facts.told('own-sources') && facts.has('own-sources', 'solar'));
  return {
    generator: of.generator,
    battery: hasFixedBattery(of),
    solar,
    vehicle: of.vehicle,
    pipedOrPropane:
      route.fuel !== null && (route.fuel.atHand === null || route.fuel.fuel === 'propane'),
    manufactured: facts.is('home-kind', 'manufactured'),
  };
}
