import type { NextStep, PlainStep } from '../../../plan/steps/next-step';
import { openAnswers } from '../household/open-answers';
import { sayFindOutFirst } from '../household/possible-if';
import { waysOn } from '../household/ways-on';
import { inSentence, listOf } from '../list-of';
import type { Named } from '../named';
import { sayPart } from '../parts/say-part';
import { sayRouteTitle } from '../routes/route-titles';
import { sayBuyFirstStep } from '../say-first-buy';
import { remedy } from '../say-high-end';
import { sayBuyStep } from '../say-thrift';
import { sentenceCase } from '../sentence-case';
import { addOnCost, addOnName } from './say-add-on';
import { sayFuelToStore } from './say-fuel-to-store';
import { sayAlarms, sayDeviceLists, sayDeviceTerms, sayRehearsal } from './say-safety-steps';

const plain: Readonly<Record<PlainStep, string>> = {
  panel: 'Have the electrical panel looked at before anything else is bought.',
  quotes:
    'Ask three licensed electricians to quote from the points under "Where a licensed electrician is required", with permit and inspection in the price.',
  'ask-association':
    'Bring the rule you copied to the association, and ask in writing whether it allows what this plan needs.',
  'grid-approval':
    'Ask the power company for its approval before anything that runs beside the grid is switched on.',
  'gas-supply':
    'Have meter, pipe and regulator confirmed in writing before ordering the generator.',
  order:
    'Lay each quote beside this plan, take the one that meets it, and order it with permit and inspection in the price.',
  'tell-insurer':
    'Tell the insurer, and the landlord or association where there is one, and keep the answer.',
};

/** What to do, in a sentence or two; who does it stands beside it. */
export function sayStep(step: NextStep, home: Named): string {
  switch (step.id) {
    case 'agree-on-device':
      return sayDeviceTerms(step.careful);
    case 'on-the-lists':
      return sayDeviceLists(step.careful);
    case 'settle':
      return `Settle this first. ${openAnswers.settle(step.found)}`;
    case 'alarms':
      return sayAlarms(step.have);
    case 'store-water':
      return `Store a gallon of water a person a day,${step.animals ? ' water and food for the animals,' : ''} lights, a cooler and a paper list of phone numbers.`;
    // A title alone would tell nobody what to look for.
    case 'find-out':
      return `Find out, ${inSentence(step.says)}: ${step.how}`;
    case 'find-out-first':
      return sayFindOutFirst(step.conditions);
    case 'one-room':
      return waysOn.decideOnRoom(step.way, step.asked);
    case 'buy':
      return sayBuyStep(
        step.parts.map((part) => sayPart(part.called)),
        step.thriftUsd,
        step.waitsUsd,
        step.roomUnits,
      );
    case 'buy-first':
      return sayBuyFirstStep(
        step.parts.map((part) => sayPart(part.called)),
        step.usd,
      );
    case 'permits':
      return step.asked
        ? 'You have asked the permit office: have every permit it named in hand before work begins.'
        : 'Ask which permits are needed and where the equipment may stand.';
    case 'measure':
      return `${sentenceCase(remedy(home, step.shortfalls))}. At the high end it is more than the ${inSentence(sayRouteTitle(step.called))} gives.`;
    case 'fuel':
      return sayFuelToStore(step.fuel);
    case 'price-beside':
      return `Price beside it: ${listOf(step.addOns.map((one) => `${inSentence(addOnName(one))}, ${addOnCost(one)}`))}.`;
    case 'rehearse':
      return sayRehearsal(step.lifeSupport);
    default:
      return plain[step.id];
  }
}
