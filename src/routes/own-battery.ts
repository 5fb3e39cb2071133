import type { Home } from '../home/home';
import { usableKwh } from '../physics/battery-capacity';
import { coldCapacity } from '../physics/cold-battery';
import { type BatteryType, batteryType, coldPoints } from '../tables/battery-types';
import { practice } from '../tables/practice-figures';
import { cellC, INDOORS_C, PLANNED_AGE_YEARS } from './battery-hours';
import { owned } from './costs';
import { shareAtItsCurrent, shareAtItsTemperature } from './own-lead-acid';
import type { Part } from './route';

/** A battery the household has already, as it can be counted on in an outage. */
export interface OwnBattery {
  readonly form: 'pack' | 'fixed';
  readonly nameplateKwh: number;
  readonly usableKwh: number;
  readonly watts: number;
  readonly startVa: number;
  readonly ageYears: number;
}

/** VA of start for each W of a home inverter, and of a pack, as in the table of generic sizes. */
const START_PER_WATT = {
  fixed: practice('home-inverter-start-per-watt'),
  pack: practice('pack-start-per-watt'),
} as const;

const types: Readonly<Record<string, BatteryType | null>> = {
  lfp: 'lithium-iron-phosphate',
  'other-lithium': 'lithium-iron-phosphate',
  'lead-acid': 'lead-acid-sealed',
  'home-made': null,
};
/** A kind nobody has read counts as the one that gives least. */
const LEAST = 'lead-acid-sealed';

/** It was told to give modified sine; that is asked only where motors or health devices would hang on it. */
function givesRoughPower({ facts }: Home): boolean {
  return facts.told('pack-wave') && facts.is('pack-wave', 'modified');
}

/**
 * Null where none was told, where it gives rough power, or where it was built at home, which nobody can plan on. Counted at its own age, and at
 * no less than the planned age of a new one.
 */
export function ownBattery(home: Home): OwnBattery | null {
  const { facts } = home;
  if (!facts.told('own-sources') || givesRoughPower(home)) return null;
  const fixed = facts.has('own-sources', 'home-battery');
  if (!fixed && !facts.has('own-sources', 'power-pack')) return null;
  const kind = facts.told('battery-kind') ? String(facts.value('battery-kind')) : null;
  const type = kind === null ? LEAST : (types[kind] ?? null);
  if (type === null) return null;
  const row = batteryType(type);
  const nameplateKwh = facts.number('battery-kwh') ?? 0;
  const watts = 1000 * (facts.number('battery-kw') ?? 0);
  const form = fixed ? 'fixed' : 'pack';
  const ageYears = Math.max(PLANNED_AGE_YEARS, facts.number('battery-years') ?? 0);
  const cell = fixed ? cellC(home) : INDOORS_C;
  const leadAcid = type !== 'lithium-iron-phosphate';
  const { peukertExponent } = row;
  const rateShare = leadAcid
    ? shareAtItsCurrent(home, { nameplateKwh, kw: watts / 1000, peukertExponent })
    : 1;
  return {
    form,
    nameplateKwh,
    usableKwh: usableKwh({
      nameplateKwh: nameplateKwh * rateShare,
      usableDepth: row.usableDepth,
      ageYears,
      fadePerYear: row.fadePerYear,
      coldShare: leadAcid ? shareAtItsTemperature(cell) : coldCapacity(cell, coldPoints(row)),
    }),
    watts,
    startVa: START_PER_WATT[form] * watts,
    ageYears,
  };
}

export function ownFixedBattery(home: Home): OwnBattery | null {
  const own = ownBattery(home);
  return own?.form === 'fixed' ? own : null;
}

export function ownPack(home: Home): OwnBattery | null {
  const own = ownBattery(home);
  return own?.form === 'pack' ? own : null;
}

/** Theirs among the parts of a route that counts on it. */
export const ownBatteryPart = ({ nameplateKwh }: OwnBattery): Part =>
  owned({ code: 'own-battery', kwh: nameplateKwh }, 'battery', nameplateKwh);
