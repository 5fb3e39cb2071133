import type { Advice } from '../../advice/advice';
import type { PossibleIf } from '../../advice/possible-if';
import type { Home } from '../../home/home';
import { hasFixedBattery, hasFixedGenerator, isSource } from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import { hasWiringToDo } from '../../routes/wiring-to-do';
import type { Finding, Who } from '../../rules/rule';
import { openAnswers } from '../../words/en/household/open-answers';
import { sayFindOutFirst } from '../../words/en/household/possible-if';
import { inSentence, listOf } from '../../words/en/list-of';
import { remedy } from '../../words/en/say-high-end';
import { sayBuyStep, sayOrderStep } from '../../words/en/say-thrift';
import { sentenceCase } from '../../words/en/sentence-case';
import type { Electrical } from '../electrical/electrical';
import type { FuelToStore } from '../fuel/fuel-to-store';
import type { ToFindOut } from '../sureness/worth-finding-out';
import { thriftCostUsd } from '../thrift-cost';
import type { AddOn } from './add-ons';
import { alarmStep, medicalSteps, rehearsal } from './safety-steps';

/** What a step is about, for whoever picks among them. */
export type StepId =
  | 'agree-on-device'
  | 'on-the-lists'
  | 'settle'
  | 'alarms'
  | 'store-water'
  | 'find-out'
  | 'find-out-first'
  | 'panel'
  | 'buy'
  | 'quotes'
  | 'permits'
  | 'ask-association'
  | 'grid-approval'
  | 'gas-supply'
  | 'order'
  | 'measure'
  | 'fuel'
  | 'price-beside'
  | 'tell-insurer'
  | 'rehearse';

export interface NextStep {
  readonly id: StepId;
  readonly what: string;
  /** Words of the household that belong to it, said back as they are. */
  readonly told?: string;
  readonly who: Who;
}

interface Of {
  readonly home: Home;
  readonly advice: Advice;
  readonly cautions: readonly Finding[];
  readonly toFindOut: readonly ToFindOut[];
  readonly electrical: Electrical;
  readonly fuelToStore: FuelToStore | null;
  readonly addOns: readonly AddOn[];
  readonly possibleIf: readonly PossibleIf[];
}

/** What to do next, in order, and who does it. */
export function nextSteps(of: Of): NextStep[] {
  const { home, advice } = of;
  const power = isSource(traitsOf[advice.route.kind]);
  return [
    ...medicalSteps(home),
    ...settleSteps(of),
    ...panelSteps(of),
    alarmStep(home),
    ...findOutFirst(of),
    ...buySteps(of),
    {
      id: 'store-water' as const,
      what: `Store a gallon of water a person a day,${hasAnimals(home) ? ' water and food for the animals,' : ''} lights, a cooler and a paper list of phone numbers.`,
      who: 'household',
    },
    ...associationStep(of),
    ...wiredSteps(of),
    ...findOutSteps(of),
    ...sourceSteps(of),
    ...(power
      ? [
          {
            id: 'tell-insurer' as const,
            what: 'Tell the insurer, and the landlord or association where there is one, and keep the answer.',
            who: 'insurer or landlord' as const,
          },
          ...orderStep(of),
          { id: 'rehearse' as const, what: rehearsal(home), who: 'household' as const },
        ]
      : []),
  ];
}

const hasAnimals = ({ facts }: Home) =>
  facts.told('animals') && facts.has('animals', 'pets', 'stay-outside');

/** Answers that do not fit together come before anything is bought on them. */
function settleSteps({ electrical }: Of): NextStep[] {
  return electrical.toSettle.map((found) => ({
    id: 'settle' as const,
    what: `Settle this first. ${openAnswers.settle(found)}`,
    who: 'household',
  }));
}

/** Questions worth a walk through the house before anything is bought. */
const TO_FIND_OUT = 4;

/** A title alone would tell nobody what to look for. */
function findOutSteps({ toFindOut }: Of): NextStep[] {
  return toFindOut.slice(0, TO_FIND_OUT).map(({ says, how }) => ({
    id: 'find-out' as const,
    what: `Find out, ${inSentence(says)}: ${how}`,
    who: 'household' as const,
  }));
}

/** A condition that would open more than the route advised can do is settled before money is spent. */
function findOutFirst({ advice, possibleIf }: Of): NextStep[] {
  const [first] = possibleIf;
  const done = advice.advised !== null && advice.list[advice.advised]?.reaches === true;
  if (first === undefined || done) return [];
  const what = sayFindOutFirst(first.conditions.map(({ code }) => code));
  return [{ id: 'find-out-first', what, who: 'household' }];
}

/** What is plugged in is bought by the household; what is wired in begins with quotes. */
function buySteps({ advice }: Of): NextStep[] {
  const { route } = advice;
  const traits = traitsOf[route.kind];
  const parts = route.parts.filter((part) => part.costUsd.value > 0);
  if (!isSource(traits) || hasWiringToDo(route) || parts.length === 0) return [];
  const what = sayBuyStep(
    parts.map((part) => part.name),
    thriftCostUsd(advice),
  );
  return [{ id: 'buy', what, who: 'household' }];
}

/** What is wired in is ordered when all that could change it is known. */
const orderStep = ({ advice: { route } }: Of): NextStep[] =>
  hasWiringToDo(route) ? [{ id: 'order', what: sayOrderStep(), who: 'household' }] : [];

/** The very sentence goes to those who keep it; what was copied is said back and never read. */
function associationStep({ home: { facts }, advice: { route } }: Of): NextStep[] {
  const told = facts.text('association-words');
  if (told === null || !isSource(traitsOf[route.kind])) return [];
  const what =
    'Bring the rule you copied to the association, and ask in writing whether it allows what this plan needs.';
  return [{ id: 'ask-association', what, told, who: 'insurer or landlord' }];
}

function panelSteps({ cautions }: Of): NextStep[] {
  const told = cautions.filter((one) => !one.careful);
  const bad = told.some((c) => ['hot-panel', 'panel-damage', 'known-bad-panel'].includes(c.id));
  return bad
    ? [
        {
          id: 'panel' as const,
          what: 'Have the electrical panel looked at before anything else is bought.',
          who: 'licensed electrician',
        },
      ]
    : [];
}

function wiredSteps({ home: { facts }, advice: { route } }: Of): NextStep[] {
  const steps: NextStep[] = [];
  if (hasWiringToDo(route)) {
    steps.push(
      {
        id: 'quotes' as const,
        what: 'Ask three licensed electricians to quote from the points under "Where a licensed electrician is required", with permit and inspection in the price.',
        who: 'licensed electrician',
      },
      {
        id: 'permits' as const,
        what: facts.has('permissions', 'permit-office-asked')
          ? 'You have asked the permit office: have every permit it named in hand before work begins.'
          : 'Ask which permits are needed and where the equipment may stand.',
        who: 'building or fire department',
      },
    );
  }
  if (hasFixedBattery(traitsOf[route.kind])) {
    steps.push({
      id: 'grid-approval' as const,
      what: 'Ask the power company for its approval before anything that runs beside the grid is switched on.',
      who: 'utility',
    });
  }
  if (hasFixedGenerator(traitsOf[route.kind])) {
    steps.push({
      id: 'gas-supply' as const,
      what: 'Have meter, pipe and regulator confirmed in writing before ordering the generator.',
      who: 'gas fitter',
    });
  }
  return steps;
}

/** What the size, the fuel and the cautions of the route advised still ask of the household. */
function sourceSteps({ home, advice, electrical, fuelToStore, addOns }: Of): NextStep[] {
  const gaps = electrical.highEnd.filter((gap) => gap.route === advice.route.kind);
  const steps: NextStep[] = [];
  if (gaps.length > 0) {
    steps.push({
      id: 'measure' as const,
      what: `${sentenceCase(remedy(home, gaps))}. At the high end it is more than the ${inSentence(advice.route.title)} gives.`,
      who: 'household',
    });
  }
  if (fuelToStore !== null)
    steps.push({ id: 'fuel' as const, what: fuelToStore.says, who: fuelToStore.who });
  if (addOns.length > 0) {
    steps.push({
      id: 'price-beside' as const,
      what: `Price beside it: ${listOf(addOns.map((one) => `${inSentence(one.name)}, ${one.cost}`))}.`,
      who: 'household',
    });
  }
  return steps;
}
