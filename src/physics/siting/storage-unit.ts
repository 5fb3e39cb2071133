import { mustBePositive } from '../../quantity/must-be';

/** Where a battery is meant to go. `sleeping` holds closets that open into bedrooms. */
export type StoragePlace =
  | 'utility-space'
  | 'garage'
  | 'exterior-wall'
  | 'ground'
  | 'sleeping'
  | 'living';

/** One battery unit; null is not known. */
export interface StorageUnit {
  readonly kwh: number;
  readonly place: StoragePlace;
  /** Gap to the next unit, in; Infinity when it stands alone. */
  readonly gapIn: number | null;
  /** Least gap that a fire test of this model (UL 9540A) shows to be enough, in; null without a report. */
  readonly testedGapIn: number | null;
  /** Nearest door or window, in, and whether it opens into the dwelling. */
  readonly openingIn: number | null;
  readonly openingIntoDwelling: boolean | null;
  /** Where a car can hit it, the height of its underside, in; Infinity where no car comes. */
  readonly aboveVehicleIn: number | null;
  /** Listed and marked for use in living space. */
  readonly listedForLiving: boolean;
}

export interface StorageLimits {
  readonly unitKwh: number;
  readonly placeKwh: Readonly<
    Record<'utility-space' | 'garage' | 'exterior-wall' | 'ground', number>
  >;
  readonly gapIn: number;
  readonly openingIn: number;
  readonly aboveVehicleIn: number;
}

export type StorageFindingId =
  | 'unit-too-large'
  | 'place-not-allowed'
  | 'units-too-close'
  | 'too-near-opening'
  | 'needs-vehicle-protection'
  | 'place-over-limit'
  | 'total-check-local';

export interface StorageFinding {
  readonly id: StorageFindingId;
  /** `fails`: not so. `protect`: with a barrier. `ask`: the building department decides, or a fact is missing. */
  readonly verdict: 'fails' | 'protect' | 'ask';
  readonly place?: StoragePlace;
  /** What was found and the limit, kWh or in. */
  readonly amount?: number | null;
  readonly limit?: number;
}

/** What stands against one unit by itself. */
export function unitFindings(unit: StorageUnit, limits: StorageLimits): StorageFinding[] {
  mustBePositive('kwh', unit.kwh, 'kWh');
  const { place } = unit;
  const findings: StorageFinding[] = [];
  if (unit.kwh > limits.unitKwh) {
    findings.push({
      id: 'unit-too-large',
      verdict: 'fails',
      place,
      amount: unit.kwh,
      limit: limits.unitKwh,
    });
  }
  if (place === 'sleeping' || (place === 'living' && !unit.listedForLiving)) {
    findings.push({ id: 'place-not-allowed', verdict: 'fails', place });
  }
  return [
    ...findings,
    ...gapFinding(unit, limits),
    ...openingFinding(unit, limits),
    ...carFinding(unit, limits),
  ];
}

function gapFinding(unit: StorageUnit, limits: StorageLimits): StorageFinding[] {
  const need = Math.min(limits.gapIn, unit.testedGapIn ?? limits.gapIn);
  if (unit.gapIn !== null && unit.gapIn >= need) return [];
  const verdict = unit.gapIn === null ? 'ask' : 'fails';
  return [{ id: 'units-too-close', verdict, place: unit.place, amount: unit.gapIn, limit: need }];
}

function openingFinding(unit: StorageUnit, limits: StorageLimits): StorageFinding[] {
  if (unit.openingIn !== null && unit.openingIn >= limits.openingIn) return [];
  // Too near, but not into the dwelling, or something not known: a judgement for the building department.
  const verdict = unit.openingIn !== null && unit.openingIntoDwelling === true ? 'fails' : 'ask';
  const { place, openingIn: amount } = unit;
  return [{ id: 'too-near-opening', verdict, place, amount, limit: limits.openingIn }];
}

function carFinding(unit: StorageUnit, limits: StorageLimits): StorageFinding[] {
  const height = unit.aboveVehicleIn;
  if (height !== null && height >= limits.aboveVehicleIn) return [];
  const verdict = height === null ? 'ask' : 'protect';
  const { place } = unit;
  return [
    {
      id: 'needs-vehicle-protection',
      verdict,
      place,
      amount: height,
      limit: limits.aboveVehicleIn,
    },
  ];
}
