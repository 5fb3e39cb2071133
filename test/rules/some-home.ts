import interview from '#compiled/questions.js';
import { Facts } from '../../src/home/facts';
import { seasonsOf } from '../../src/home/goal-seasons';
import type { Demand, Home, Site } from '../../src/home/home';
import type { Answer, Answers } from '../../src/interview/answers';
import { type Known, type Resolved, resolve } from '../../src/interview/questions/resolve';
import { figure } from '../../src/quantity/figure';
import { placeOf } from '../../src/tables/place/place';

const source = { kind: 'told' } as const;
const plain = (value: number, unit: string) => figure({ value, unit, source });
const nothing: Demand = {
  runningWatts: plain(0, 'W'),
  runningVa: plain(0, 'VA'),
  startVa: plain(0, 'VA'),
  kwhPerDay: {
    winter: plain(0, 'kWh/day'),
    summer: plain(0, 'kWh/day'),
    mild: plain(0, 'kWh/day'),
  },
  wattsByHour: { winter: [], summer: [], mild: [] },
  needs240: false,
  hardestStart: null,
  startsTogether: [],
};

export const mildSite: Site = {
  zip: null,
  place: placeOf({ zip: '' }),
  state: null,
  elevationFt: plain(300, 'ft'),
  coldF: 60,
  hotF: 75,
};

/** Facts by hand: answers told, and questions that apply and are open, with what is assumed. */
export function knownOf(
  told: Record<string, Answer>,
  open: Record<string, Answer | null> = {},
): Resolved {
  const known = new Map<string, Known>();
  for (const [id, value] of Object.entries(told)) known.set(id, { value, how: 'told' });
  for (const [id, value] of Object.entries(open)) known.set(id, { value, how: 'unasked' });
  return known;
}

/** A Home of some answers to the real questions; what is not answered counts as not known. */
export function answeredHome(answers: Answers, site: Partial<Site> = {}): Home {
  return someHome(resolve(interview.questions, answers, 'assume'), site);
}

/** A Home around some facts. It has no loads: rules read facts, site and life support. */
export function someHome(known: Resolved, site: Partial<Site> = {}): Home {
  const facts = new Facts(known);
  const elevationFt = site.elevationFt ?? mildSite.elevationFt;
  return {
    way: 'usual',
    name: 'test',
    asOf: '2026-11-25',
    facts,
    site: { ...mildSite, ...site, elevationFt },
    people: plain(2, 'people'),
    lifeSupport: lifeSupportOf(known),
    loads: [],
    usualLoads: [],
    demand: { must: nothing, good: nothing, all: nothing },
    goalHours: plain(facts.number('goal-hours') ?? 24, 'h'),
    goalSeasons: seasonsOf(facts),
    calibration: null,
    billYear: null,
    billCheck: { verdict: 'not-possible', because: 'no-bill' },
  };
}

function lifeSupportOf(known: Resolved): Home['lifeSupport'] {
  const at = known.get('medical-devices');
  if (at === undefined || at.how !== 'told' || !Array.isArray(at.value)) return 'unknown';
  if (at.value.includes('prefer-not-to-say')) return 'unknown';
  const life = ['oxygen-concentrator', 'ventilator', 'dialysis', 'heart-pump'];
  return at.value.some((id) => life.includes(id)) ? 'yes' : 'no';
}
