import type { Advice } from '../../advice/advice';
import { firstWorth, type PossibleIf } from '../../advice/possible-if';
import type { Home } from '../../home/home';
import { hasFixedBattery, hasFixedGenerator, isSource, outletsOnly } from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import type { Route } from '../../routes/route';
import { hasWiringToDo } from '../../routes/wiring-to-do';
import type { Finding } from '../../rules/rule';
import type { Electrical } from '../electrical/electrical';
import type { FuelToStore } from '../fuel/fuel-to-store';
import type { ToFindOut } from '../sureness/worth-finding-out';
import { thriftCostUsd } from '../thrift-cost';
import { type AddOn, isCountedOn } from './add-ons';
import type { NextStep } from './next-step';
import { alarmStep, medicalSteps } from './safety-steps';

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
export function nextSteps(given: Of): NextStep[] {
  const { home, advice } = given;
  const power = isSource(traitsOf[advice.route.kind]);
  const buying = buySteps(given);
  return [
    ...medicalSteps(home),
    ...settleSteps(given),
    ...panelSteps(given),
    alarmStep(home),
    ...oneRoomStep(given),
    ...findOutFirst(given),
    ...buying,
    {
      id: 'store-water' as const,
      animals: hasAnimals(home),
      who: 'household',
    },
    ...associationStep(given),
    ...wiredSteps(given),
    ...findOutSteps(given),
    ...sourceSteps(given, buying),
    ...(power
      ? [
          {
            id: 'tell-insurer' as const,
            who: 'insurer or landlord' as const,
          },
          ...orderStep(given),
          {
            id: 'rehearse' as const,
            lifeSupport: home.lifeSupport !== 'no',
            who: 'household' as const,
          },
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
    found,
    who: 'household',
  }));
}

/** Questions worth a walk through the house before anything is bought. */
const TO_FIND_OUT = 4;

/** A title alone would tell nobody what to look for. */
function findOutSteps({ toFindOut }: Of): NextStep[] {
  return toFindOut.slice(0, TO_FIND_OUT).map(({ question, says, how }) => ({
    id: 'find-out' as const,
    question,
    says,
    how,
    who: 'household' as const,
  }));
}

/** Theirs to decide: the plan stays with the whole home, as they told. */
function oneRoomStep({ home, advice: { waysOn } }: Of): NextStep[] {
  const way = waysOn?.oneRoom ?? null;
  if (home.lifeSupport !== 'no' || way === null) return [];
  return way.doesItWithin || way.keepsRoom
    ? [{ id: 'one-room', way, asked: home.facts.told('one-room'), who: 'household' }]
    : [];
}

/** A condition that would open more than the route advised can do is settled before money is spent. */
function findOutFirst({ advice, possibleIf }: Of): NextStep[] {
  const first = firstWorth(possibleIf);
  const done = advice.advised !== null && advice.list[advice.advised]?.reaches === true;
  if (first === null || done) return [];
  const conditions = first.conditions.map(({ code }) => code);
  return [{ id: 'find-out-first', conditions, who: 'household' }];
}

/** What is plugged in is bought by the household; what is wired in begins with quotes. */
function buySteps({ advice, addOns }: Of): NextStep[] {
  const { route, firstBuy } = advice;
  const traits = traitsOf[route.kind];
  const first = buyFirst(advice);
  const bought = first.flatMap(({ parts }) => parts.map(({ equipmentClass }) => equipmentClass));
  const parts = priced(route).filter(({ equipmentClass }) => !bought.includes(equipmentClass));
  if (!isSource(traits) || hasWiringToDo(route) || parts.length === 0) return first;
  const thriftUsd = first.length > 0 ? 0 : thriftCostUsd(advice);
  return [
    ...first,
    {
      id: 'buy',
      parts,
      roomUnits: addOns.filter(isCountedOn),
      thriftUsd,
      waitsUsd: firstBuy?.shortUsd ?? 0,
      who: 'household',
    },
  ];
}

/** What is plugged in and paid of the money there now, where the rest has to wait. */
function buyFirst({ firstBuy }: Advice): Extract<NextStep, { id: 'buy-first' }>[] {
  const part = firstBuy?.part ?? null;
  if (part === null || !outletsOnly(traitsOf[part.kind])) return [];
  return [{ id: 'buy-first', parts: priced(part), usd: part.usd, who: 'household' }];
}

const priced = ({ parts }: Pick<Route, 'parts'>) => parts.filter((part) => part.costUsd.value > 0);

/** What is wired in is ordered when all that could change it is known. */
const orderStep = ({ advice: { route } }: Of): NextStep[] =>
  hasWiringToDo(route) ? [{ id: 'order', who: 'household' }] : [];

/** The very sentence goes to those who keep it; what was copied is said back and never read. */
function associationStep({ home: { facts }, advice: { route } }: Of): NextStep[] {
  const told = facts.text('association-words');
  if (told === null || !isSource(traitsOf[route.kind])) return [];
  return [{ id: 'ask-association', told, who: 'insurer or landlord' }];
}

function panelSteps({ cautions }: Of): NextStep[] {
  const told = cautions.filter((one) => !one.careful);
  const bad = told.some((c) => ['hot-panel', 'panel-damage', 'known-bad-panel'].includes(c.id));
  return bad
    ? [
        {
          id: 'panel' as const,
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
        who: 'licensed electrician',
      },
      {
        id: 'permits' as const,
        asked: facts.has('permissions', 'permit-office-asked'),
        who: 'building or fire department',
      },
    );
  }
  if (hasFixedBattery(traitsOf[route.kind])) {
    steps.push({
      id: 'grid-approval' as const,
      who: 'utility',
    });
  }
  if (hasFixedGenerator(traitsOf[route.kind])) {
    steps.push({
      id: 'gas-supply' as const,
      who: 'gas fitter',
    });
  }
  return steps;
}

/** What the size, the fuel and the cautions of the route advised still ask of the household. */
function sourceSteps(given: Of, buying: readonly NextStep[]): NextStep[] {
  const { advice, electrical, fuelToStore } = given;
  const bought = buying.some(({ id }) => id === 'buy');
  const addOns = given.addOns.filter((one) => !(bought && isCountedOn(one)));
  const shortfalls = electrical.highEnd.filter(({ route }) => route === advice.route.kind);
  const steps: NextStep[] = [];
  if (shortfalls.length > 0) {
    steps.push({
      id: 'measure' as const,
      shortfalls: shortfalls,
      called: advice.route.called,
      who: 'household',
    });
  }
  if (fuelToStore !== null)
    steps.push({ id: 'fuel' as const, fuel: fuelToStore, who: fuelToStore.who });
  if (addOns.length > 0) {
    steps.push({
      id: 'price-beside' as const,
      addOns,
      who: 'household',
    });
  }
  return steps;
}
