import type { Tariff } from '../bill/tariff';
import type { Home, Load } from '../home/home';
import { roofDoubt } from '../home/roof';
import type { Answers } from '../interview/answers';
import { formatQuantity } from '../quantity/format-quantity';
import { fullLoadCurrent } from '../tables/motor-current';
import { monthOutsideYear, mustRunOverBill } from './bill-contradictions';
import { billNotMatched } from './money/bill-contradiction';

/** Two answers that cannot both be right. Nothing is averaged: the household says which one holds. */
export interface Contradiction {
  readonly id: string;
  /** The question that settles it. */
  readonly asks: string;
  /** Both answers as they were given. */
  readonly answers: readonly [string, string];
  /** Questions to look at again. */
  readonly questions: readonly string[];
}

type Check = (home: Home, answers: Answers, ownTariff: Tariff | null) => Contradiction | null;

/**
 * Every pair of answers of this home that does not fit together, from what was told, not from what we assumed.
 * `answers` as they stand in the file: a question that does not apply, such as the well of an apartment, is only there.
 */
export function contradictions(
  home: Home,
  answers: Answers,
  ownTariff: Tariff | null = null,
): Contradiction[] {
  return checks.flatMap((check) => check(home, answers, ownTariff) ?? []);
}

const told = ({ facts }: Home, id: string) => (facts.told(id) ? facts.number(id) : null);
const said = ({ facts }: Home, id: string, ...choices: string[]) =>
  facts.told(id) && (facts.is(id, ...choices) || facts.has(id, ...choices));

/** Share of the main from which a car charger is out of keeping with it. Common practice, no source. */
const LARGE_CHARGER_SHARE = 0.6;

const chargerOnSmallService: Check = (home) => {
  const [car, main] = [told(home, 'ev-breaker'), told(home, 'main-amps')];
  if (car === null || main === null || car < LARGE_CHARGER_SHARE * main) return null;
  return {
    id: 'charger-on-small-service',
    asks: 'Is the breaker of the car charger, or that of the house, read wrong? If both are right, a load calculation or a listed load manager is needed.',
    answers: [`The car charger's breaker is ${car} A.`, `The main breaker is ${main} A.`],
    questions: ['ev-breaker', 'main-amps'],
  };
};

const mainOverBus: Check = (home) => {
  const [main, bus] = [told(home, 'main-amps'), told(home, 'panel-bus')];
  if (main === null || bus === null || main <= bus) return null;
  return {
    id: 'main-over-bus',
    asks: "Which number is right? A main larger than the panel may carry is an electrician's first job.",
    answers: [`The main breaker is ${main} A.`, `The panel's label says ${bus} A.`],
    questions: ['main-amps', 'panel-bus'],
  };
};

/** Deeper than this, a 120 V pump is unlikely. Common practice, no source. */
const DEEP_FT = 150;

const deepPumpAt120: Check = (home) => {
  const depth = told(home, 'well-depth');
  if (
    !said(home, 'well-volts', 'v120') ||
    !said(home, 'water-source', 'well') ||
    depth === null ||
    depth < DEEP_FT
  )
    return null;
  return {
    id: 'deep-pump-at-120',
    asks: 'Is the pump breaker a double one? Pumps this deep are nearly always 240 V.',
    answers: ['The water pump runs on 120 V.', `The well is ${formatQuantity(depth, 'ft')} deep.`],
    questions: ['well-volts', 'well-depth'],
  };
};

/** The table's running current may differ from a label by so much before we ask. Our judgement. */
const AMPS_SHARE = { low: 0.5, high: 2 };

/** Horsepower, volts and amps of the pump by NEC Table 430.248: amps that fit the other voltage are asked about. */
const pumpVoltsAmps: Check = (home) => {
  const [hp, amps] = [told(home, 'well-hp'), told(home, 'well-run-amps')];
  if (hp === null || amps === null || !home.facts.told('well-volts')) return null;
  const row = fullLoadCurrent.rows.find((r) => r.hp >= hp - 0.02);
  if (row === undefined) return null;
  const volts = home.facts.is('well-volts', 'v120') ? 120 : 240;
  const full = volts === 120 ? row.amps115 : row.amps230;
  if (amps >= AMPS_SHARE.low * full && amps <= AMPS_SHARE.high * full) return null;
  return {
    id: 'pump-volts-amps',
    asks: `Is the voltage or the number of amps read wrong? A ${formatQuantity(hp, 'hp')} motor at ${volts} V runs at about ${full} A.`,
    answers: [`The pump is ${formatQuantity(hp, 'hp')} on ${volts} V.`, `It runs at ${amps} A.`],
    questions: ['well-hp', 'well-volts', 'well-run-amps'],
  };
};

const startBelowRun: Check = (home) => {
  const pairs = [
    ['well-run-amps', 'well-start-amps', 'The water pump'],
    ['heat-pump-run-amps', 'heat-pump-start-amps', 'The heat pump'],
    ['cool-run-amps', 'cool-start-amps', 'The air conditioner'],
  ] as const;
  for (const [runId, startId, name] of pairs) {
    const [run, start] = [told(home, runId), told(home, startId)];
    if (run === null || start === null || start >= run) continue;
    return {
      id: 'start-below-run',
      asks: 'Were the two numbers swapped? A motor starts with more than it runs with.',
      answers: [`${name} runs at ${run} A.`, `It starts at ${start} A.`],
      questions: [runId, startId],
    };
  }
  return null;
};

const outletId = /^(oxygen|ventilator|cpap|dialysis|other-medical)-watts$/;
/** Most an ordinary outlet gives for hours: 15 A x 120 V. NEC Table 210.21(B)(3). */
const OUTLET_WATTS = 1800;

const overOutlet: Check = (home) => {
  const id = home.facts
    .ids()
    .find((one) => outletId.test(one) && (told(home, one) ?? 0) > OUTLET_WATTS);
  if (id === undefined) return null;
  return {
    id: 'over-outlet',
    asks: 'Is the number amps x 10, or the start, instead of the running watts?',
    answers: [
      `${id.replace('-watts', '').replace('-', ' ')}: ${told(home, id)} W.`,
      `An ordinary outlet gives ${OUTLET_WATTS} W.`,
    ],
    questions: [id],
  };
};

const apartmentWith: Check = (home, answers) => {
  if (!said(home, 'home-kind', 'apartment')) return null;
  const own = home.facts.has('own-sources', 'engine-standby', 'solar', 'home-battery');
  const well = ['well', 'shallow-pump'].includes(String(answers['water-source']));
  if (!own && !well) return null;
  return {
    id: 'apartment-with',
    asks: 'Is it an apartment? A well, a standby engine, a roof or a fixed battery of your own points to a house.',
    answers: [
      'The home is an apartment.',
      well
        ? 'Water comes from a well of its own.'
        : 'It has a standby engine, solar panels or a home battery of its own.',
    ],
    questions: ['home-kind', well ? 'water-source' : 'own-sources'],
  };
};

const lifeWithoutSecondWay: Check = (home) => {
  if (home.lifeSupport !== 'yes' || !said(home, 'second-source', 'none')) return null;
  return {
    id: 'life-without-second-way',
    asks: 'What keeps the person safe when every source in the house fails? Agree on it with the clinician and the supplier.',
    answers: ['Somebody depends on a powered device.', 'There is no second way yet.'],
    questions: ['medical-devices', 'second-source'],
  };
};

const nobodyForEngine: Check = (home) => {
  if (!said(home, 'operators', 'none') || !said(home, 'own-sources', 'engine-portable'))
    return null;
  return {
    id: 'nobody-for-engine',
    asks: 'Who would move, start and refuel the generator? Without somebody it does not count.',
    answers: [
      'Nobody here can lift, start and refuel an engine.',
      'There is a portable generator.',
    ],
    questions: ['operators', 'own-sources'],
  };
};

/** Below this, no route that carries a whole house can be had. Our judgement from the table of costs. */
const SMALL_BUDGET_USD = 1000;

const normalLifeSmallBudget: Check = (home) => {
  const [now, later] = [told(home, 'budget-now'), told(home, 'budget-later')];
  if (!said(home, 'goal-scope', 'normal') || now === null || later === null) return null;
  const most = Math.max(now, later);
  if (most >= SMALL_BUDGET_USD) return null;
  return {
    id: 'normal-life-small-budget',
    asks: 'Which matters more: almost everything running, or the cost? A few things that count can be kept for little.',
    answers: [
      'Almost everything should go on as on any other day.',
      `At most ${formatQuantity(most, '$')} can be spent.`,
    ],
    questions: ['goal-scope', 'budget-later'],
  };
};

/** A portable engine at a light load burns about so much a day, gal: 13 kWh a day at 0.3 gal/kWh. Common practice, no source. */
const GALLONS_A_DAY = 4;

const goalBeyondFuel: Check = (home) => {
  const [gallons, goal] = [told(home, 'gasoline-gallons'), told(home, 'goal-hours')];
  if (gallons === null || goal === null || gallons === 0) return null;
  const gasoline =
    said(home, 'own-sources', 'engine-portable') && said(home, 'engine-fuel', 'gasoline');
  const hours = (24 * gallons) / GALLONS_A_DAY;
  if (!gasoline || !said(home, 'fuel-refill', 'no') || hours >= goal) return null;
  return {
    id: 'goal-beyond-fuel',
    asks: 'Keep more fuel as far as the fire department allows, run less, or plan a shorter time?',
    answers: [
      `You want to manage ${formatQuantity(goal, 'h')}.`,
      `${formatQuantity(gallons, 'gal')} of gasoline lasts about ${formatQuantity(Math.round(hours), 'h')} and cannot be refilled.`,
    ],
    questions: ['goal-hours', 'gasoline-gallons', 'fuel-refill'],
  };
};

const mustRunAt240: Check = (home) => {
  if (!said(home, 'engine-volts', 'v120') || !home.demand.must.needs240) return null;
  const loads = home.loads.filter(
    (load: Load) => load.rank === 'must' && load.volts === 240 && !load.offInOutage,
  );
  if (loads.length === 0) return null;
  return {
    id: 'must-run-at-240',
    asks: 'Is the generator really 120 V only? Then it cannot run these, whatever its watts.',
    answers: [
      `These must run and need 240 V: ${loads.map((load) => load.name).join(', ')}.`,
      'The generator gives 120 V only.',
    ],
    questions: ['must-run', 'engine-volts'],
  };
};

const fuseWithInterlock: Check = (home) => {
  if (
    !said(home, 'panel-kind', 'fuses', 'no-main', 'split-bus') ||
    !said(home, 'transfer-existing', 'interlock')
  )
    return null;
  return {
    id: 'interlock-without-main',
    asks: 'Is there a main breaker after all? A sliding plate needs one to slide against. Do not use it before an electrician has looked.',
    answers: [
      'The panel has no single main breaker.',
      'A sliding plate (interlock) is fitted at the main breaker.',
    ],
    questions: ['panel-kind', 'transfer-existing'],
  };
};

const batteryBelowFlood: Check = (home) => {
  if (!said(home, 'flood-history', 'inside') || !said(home, 'battery-place', 'basement'))
    return null;
  return {
    id: 'battery-below-flood',
    asks: 'Is there a place above the highest water? A flooded battery can burn days later.',
    answers: [
      'The battery would go in the basement.',
      'Water has been in the garage, the basement or the home.',
    ],
    questions: ['battery-place', 'flood-history'],
  };
};

const roofOverHome: Check = (home) => {
  if (roofDoubt(home.facts) === null) return null;
  return {
    id: 'roof-over-home',
    asks: 'Is the roof measured again? One side of it cannot be that much larger than the home.',
    answers: [
      `The sunny side of the roof is ${home.facts.number('roof-area')} sq ft.`,
      `The home is ${home.facts.number('home-area')} sq ft inside.`,
    ],
    questions: ['roof-area', 'home-area'],
  };
};

const checks: readonly Check[] = [
  lifeWithoutSecondWay,
  mainOverBus,
  chargerOnSmallService,
  fuseWithInterlock,
  batteryBelowFlood,
  mustRunAt240,
  apartmentWith,
  deepPumpAt120,
  pumpVoltsAmps,
  startBelowRun,
  roofOverHome,
  overOutlet,
  mustRunOverBill,
  monthOutsideYear,
  (home, _, ownTariff) => billNotMatched(home, ownTariff),
  nobodyForEngine,
  goalBeyondFuel,
  normalLifeSmallBudget,
];
