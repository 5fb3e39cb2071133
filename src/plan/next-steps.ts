import type { Home } from '../home/home';
import { wiredKinds } from '../home/route-kind';
import type { Advice } from '../routes/advise';
import type { Finding, Who } from '../rules/rule';
import type { ToFindOut } from './worth-finding-out';

export interface NextStep {
  readonly what: string;
  readonly who: Who;
}

/** What to do next, in order, and who does it. */
export function nextSteps(
  home: Home,
  advice: Advice,
  cautions: readonly Finding[],
  toFindOut: readonly ToFindOut[],
): NextStep[] {
  const wired = wiredKinds.includes(advice.route.kind);
  const steps: NextStep[] = [...medicalSteps(home), ...alarmSteps(home)];
  steps.push({
    what: 'Store a gallon of water a person a day, lights, a cooler and a paper list of phone numbers.',
    who: 'household',
  });
  const open = toFindOut.slice(0, 4).map((one) => one.says);
  if (open.length > 0) steps.push({ what: `Find out: ${open.join('; ')}.`, who: 'household' });
  if (cautions.some((c) => ['hot-panel', 'panel-damage', 'known-bad-panel'].includes(c.id))) {
    steps.push({
      what: 'Have the electrical panel looked at before anything else is bought.',
      who: 'licensed electrician',
    });
  }
  if (wired) {
    steps.push(
      {
        what: 'Ask three licensed electricians to quote from the points below, with permit and inspection in the price.',
        who: 'licensed electrician',
      },
      {
        what: 'Ask which permits are needed and where the equipment may stand.',
        who: 'building or fire department',
      },
    );
  }
  if (
    ['battery-circuits', 'battery-whole', 'battery-solar', 'battery-engine'].includes(
      advice.route.kind,
    )
  ) {
    steps.push({
      what: 'Ask the power company for its approval before anything that runs beside the grid is switched on.',
      who: 'utility',
    });
  }
  if (advice.route.kind === 'standby-engine') {
    steps.push({
      what: 'Have meter, pipe and regulator confirmed in writing before ordering the engine.',
      who: 'gas fitter',
    });
  }
  if (advice.route.kind !== 'preparation') {
    steps.push({
      what: 'Tell the insurer, and the landlord or association where there is one, and keep the answer.',
      who: 'insurer or landlord',
    });
    steps.push({ what: rehearsal(home), who: 'household' });
  }
  return steps;
}

function medicalSteps(home: Home): NextStep[] {
  if (home.lifeSupport === 'no') return [];
  return [
    {
      what: 'Agree with the clinician and the equipment supplier: how long each device may be without power, a second way that needs no power from this house, and when to leave.',
      who: 'clinician or supplier',
    },
    {
      what: "Put the household on the power company's and the supplier's lists. A list gives warning; it does not keep the power on.",
      who: 'utility',
    },
  ];
}

function alarmSteps(home: Home): NextStep[] {
  if (home.facts.told('co-alarm') && home.facts.is('co-alarm', 'every-floor')) return [];
  return [
    {
      what: 'Put a carbon monoxide alarm with a battery on each floor and by the bedrooms, and press its button.',
      who: 'household',
    },
  ];
}

function rehearsal(home: Home): string {
  const base =
    'Rehearse it once on a mild day, in daylight, with two adults, before the season starts.';
  if (home.lifeSupport === 'no') return base;
  return `${base} With a life-support device: only with the clinician's agreement and the tested second source already running.`;
}
