import type { DistanceId } from '../../../plan/on-the-day/distances';
import { shown } from '../../../quantity/shown';

const dollars = (usd: number) => shown(usd, '$');
const count = (inHundred: number) =>
  inHundred > 99
    ? '>99 of 100'
    : inHundred > 0 && inHundred < 1
      ? '<1 of 100'
      : `${Math.round(inHundred)} of 100`;

/** Names of the boxes of the one-line diagram. */
export const deviceWords = {
  meter: 'Power company meter',
  main: 'Main breaker',
  interlock: 'Panel with a sliding plate',
  transfer: 'Transfer switch',
  automatic: 'Automatic transfer switch',
  panel: 'Panel',
  backedUp: 'Panel of the circuits carried',
  circuits: 'Circuits carried',
  inlet: 'Power inlet, outdoors',
  portable: 'Portable generator',
  vehicle: 'Vehicle with an outlet',
  fixed: 'Fixed generator',
  battery: 'Battery with inverter',
  charger: 'Battery charger',
  solar: 'Solar panels',
  disconnect: 'Battery disconnect, outside',
  amps: (amps: string) => `${amps}, as found`,
  sized: (size: string) => `${size}, planning size`,
  sizedWith: (size: string, there: string) => `${size} with the ${there} there`,
  told: (size: string) => `${size}, as told`,
};

/** Titles and labels of the pictures. */
export const pictureWords = {
  tooEarly:
    'Too little is told for a plan yet, and so there is nothing to draw. Go on with the questions first.',
  diagram: (route: string) => ({
    title: 'One-line diagram',
    description: `How it might be connected: ${route}. For talking it over; the electrician decides.`,
    isNew: 'new, to be quoted',
    head: ['From', 'To', 'Known of it'],
  }),
  hardCase: (goal: string, after: string | null, stored: string | null) => ({
    title: 'The careful count, hour by hour',
    description: `An outage of ${goal} by the careful count${stored === null ? '' : `, with ${stored} stored`}: what was wanted, what was given, the sun, and what is left. ${after === null ? 'It lasts to the end.' : `The first hour that is not fully served comes after ${after}.`}`,
    hours: 'hours without power',
    kilowatts: 'kW',
    wanted: 'wanted',
    served: 'given',
    sun: 'sun',
    left: 'left, % of full',
    day: (day: number) => `Day ${day}`,
    head: ['Day', 'Wanted, kWh', 'Given, kWh', 'Sun, kWh', 'Left at its end'],
  }),
  odds: (season: string, stored: { gallons: string; inHundred: number } | null) => ({
    title: 'How many outages it carries you through',
    description: `Of 100 outages of each length that start in ${season} with everything full, so many are ridden through with what must keep running${stored === null ? '' : `, on the fuel counted today. With ${stored.gallons} stored: ${count(stored.inHundred)} of your goal`}.`,
    across: 'Length of the outage',
    up: 'of 100 outages',
    likely: 'likely use',
    careful: 'careful count',
    length: (hours: number) => (hours <= 48 ? `${hours} h` : `${Math.round(hours / 24)} days`),
    count,
    goal: 'your goal',
  }),
  ladder: {
    title: 'What goes off at which level',
    description: 'The gauge of the battery or the tank, and what is switched off as it falls.',
    nothing: 'nothing more: you should already be leaving',
    head: ['What is left', 'What goes off'],
  },
  costs: (years: number) => ({
    title: 'What the routes cost over the years',
    description: `Purchase, upkeep, fuel and replacement, less what comes off the bill, over ${years} years in today's dollars.`,
    across: 'years',
    up: "today's dollars",
    dollars,
    year: (year: number) => (year === 0 ? 'To begin with' : `After ${year} years`),
    head: 'Route',
  }),
  siting: {
    title: 'Distances',
    description: 'Distances as they were told, against the least there must be.',
    told: 'as told',
    least: 'at least',
    notMeasured: 'not measured',
    noLeast: 'none asked',
    feet: (feet: number) => `${Math.round(feet)} ft`,
    head: ['Distance', 'As told', 'At least'],
    names: {
      'generator-to-opening': 'Generator to the nearest door, window or vent',
      'battery-to-opening': 'Battery to the nearest door or window into the home',
      'panel-to-wall': 'Panel to the outside wall, as a cable runs',
    } satisfies Record<DistanceId, string>,
  },
  year: {
    title: 'The year',
    description:
      'What to do in which month, and how much charge to keep for outages. Hatched: not even a full battery is enough for the goal.',
    kept: 'Charge to keep',
    task: 'What',
  },
  /** `lower`: something cheaper does more by this measure, for a part of what must run only. */
  dollars: (goal: string, lower: boolean) => ({
    title: 'What each dollar buys',
    description: `The choices that nothing else beats: price across, and up how much of the job each does in an outage of ${goal}: the things it carries times the hours it carries them.${lower ? ' The one advised carries all that must run; what stands higher carries a part of it for longer.' : ''}`,
    across: 'price',
    up: `% of the job for ${goal}`,
    budget: 'what you can spend',
    advised: 'advised',
    dollars,
    count: (percent: number) => `${Math.round(percent)}%`,
    head: ['Choice', 'Price', 'How much of the job'],
  }),
};
