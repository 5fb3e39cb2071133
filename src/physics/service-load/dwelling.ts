import type { LineName } from './line-is';

/** A load by name with its nameplate VA. */
export interface NamedVa {
  readonly name: LineName;
  readonly va: number;
}

/** An appliance on the service. */
export interface ApplianceVa extends NamedVa {
  /** false for what is not fastened in place, or is space heating: never brought down by 220.53. */
  readonly fastened?: boolean;
  /** Runs between one leg and the neutral. */
  readonly onNeutral?: boolean;
}

/** Heating and cooling of a dwelling, VA by nameplate; what is not there is left out. */
export interface HeatingCooling {
  readonly coolingVa?: number;
  /** Largest single compressor of the cooling; all of it where this is left out. */
  readonly coolingMotorVa?: number;
  /** Compressor of a heat pump. */
  readonly heatPumpVa?: number;
  /** Electric back-up heat of a heat pump. */
  readonly supplementalVa?: number;
  /** false only where a control keeps compressor and back-up heat apart. */
  readonly supplementalWithCompressor?: boolean;
  /** Central electric heat, or room heaters. */
  readonly spaceHeatVa?: number;
  /** How many separately controlled room heaters; 1 for central heat. */
  readonly spaceHeatControls?: number;
  /** Thermal storage, or heat expected to run at its nameplate all the time. */
  readonly continuousHeatVa?: number;
}

/** What a dwelling load calculation starts from. */
export interface DwellingLoads {
  readonly floorAreaFt2: number;
  /** 20 A kitchen circuits: two at least. */
  readonly smallApplianceCircuits: number;
  /** 20 A laundry circuits: one at least. */
  readonly laundryCircuits: number;
  /** Ranges, wall ovens and cooktops. */
  readonly cooking: readonly NamedVa[];
  /** Electric dryer; null for none. */
  readonly dryerVa: number | null;
  /** Fastened in place or on their own circuit: water heater, dishwasher, disposer, pumps. */
  readonly appliances: readonly ApplianceVa[];
  /** Electric-vehicle chargers. */
  readonly chargers: readonly NamedVa[];
  readonly heatingCooling: HeatingCooling;
  /** Line-to-line volts of the service: 240, or 208. */
  readonly volts: number;
}

/** The numbers of a code edition that the methods need; see the table of service-load rules. */
export interface ServiceLoadRules {
  readonly vaPerFt2: number;
  readonly circuitVa: number;
  readonly lightingFirstVa: number;
  readonly lightingSecondVa: number;
  readonly lightingSecondShare: number;
  readonly lightingRestShare: number;
  readonly optionalFirstVa: number;
  readonly existingFirstVa: number;
  readonly restShare: number;
  readonly dryerLeastVa: number;
  readonly evLeastVa: number | null;
  readonly manyAppliancesFrom: number;
  readonly manyAppliancesShare: number;
  readonly neutralShare: number;
  readonly leftOutMotorCounts: boolean;
  readonly unitLoadSection: string;
  readonly demandSection: string;
  readonly optionalSection: string;
  readonly existingSection: string;
}

/** One row of NEC Table 220.55, for one to five cooking appliances. */
export interface CookingDemand {
  readonly units: number;
  readonly underShare: number;
  readonly midShare: number;
  readonly rangeVa: number;
}

export const sumVa = (loads: readonly NamedVa[]) => loads.reduce((sum, load) => sum + load.va, 0);
