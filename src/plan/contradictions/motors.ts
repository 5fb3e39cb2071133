import { formatQuantity } from '../../quantity/format-quantity';
import { fullLoadCurrent } from '../../tables/motor-current';
import { practice } from '../../tables/practice-figures';
import { type Check, said, told } from './contradiction';

/** Deeper than this, a 120 V pump is unlikely. */
const DEEP_FT = practice('deep-for-120v-pump');

export const deepPumpAt120: Check = (home) => {
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
export const pumpVoltsAmps: Check = (home) => {
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

export const startBelowRun: Check = (home) => {
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
const OUTLET_WATTS = practice('outlet-watts');

export const overOutlet: Check = (home) => {
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
