import { fullLoadCurrent } from '../../tables/electrical/motor-current';
import { practice } from '../../tables/practice-figures';
import { type Check, healthDevices, said, told } from './contradiction';

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
    depthFt: depth,
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
    hp,
    volts,
    tableAmps: full,
    amps,
    questions: ['well-hp', 'well-volts', 'well-run-amps'],
  };
};

export const startBelowRun: Check = (home) => {
  const pairs = [
    ['well-run-amps', 'well-start-amps', 'water-pump'],
    ['heat-pump-run-amps', 'heat-pump-start-amps', 'heat-pump'],
    ['cool-run-amps', 'cool-start-amps', 'air-conditioner'],
  ] as const;
  for (const [runId, startId, motor] of pairs) {
    const [run, start] = [told(home, runId), told(home, startId)];
    if (run === null || start === null || start >= run) continue;
    return {
      id: 'start-below-run',
      motor,
      runAmps: run,
      startAmps: start,
      questions: [runId, startId],
    };
  }
  return null;
};

/** Most an ordinary outlet gives for hours: 15 A x 120 V. NEC Table 210.21(B)(3). */
const OUTLET_WATTS = practice('outlet-watts');

export const overOutlet: Check = (home) => {
  const device = healthDevices.find((one) => (told(home, `${one}-watts`) ?? 0) > OUTLET_WATTS);
  if (device === undefined) return null;
  return {
    id: 'over-outlet',
    device,
    watts: told(home, `${device}-watts`)!,
    outletWatts: OUTLET_WATTS,
    questions: [`${device}-watts`],
  };
};
