import type { Home } from '../../home/home';
import { fuelShare, type GeneratorFuel, type GeneratorType } from '../../tables/fuels';
import type { PowerStep } from '../../tables/generic-steps';
import { practice } from '../../tables/practice-figures';
import { siteShare } from '../generator-size';
import { isFuel } from './generator-fuels';
import { isTheOne } from './own-standby';

/** The portable generator the household has already. */
export interface OwnGenerator {
  readonly step: PowerStep;
  readonly ratedWatts: number;
  readonly volts: 120 | 240;
  readonly fuel: GeneratorFuel;
  /** What its fuel leaves of the watts on its label; 1 on gasoline, and where the label was read for this fuel. */
  readonly fuelShare: number;
  readonly type: Extract<GeneratorType, 'portable' | 'portable-inverter'>;
  /** An inverter generator trips on the high end of a start; one of unknown sort is taken for one. */
  readonly startEnd: 'value' | 'high';
}

/** VA of start that each W of an ordinary generator can lend for a moment, as in the table of generic sizes. */
const START_PER_WATT = practice('generator-start-per-watt');
/** An inverter generator lends its peak and no more: 1.1 to 1.3 times its running watts. */
const PEAK_PER_WATT = practice('inverter-generator-start-per-watt');

/** Null where none was told, or not how strong it is. */
export function ownGenerator(home: Home): OwnGenerator | null {
  const { facts } = home;
  if (!facts.told('own-sources') || !facts.has('own-sources', 'engine-portable')) return null;
  const ratedWatts = facts.number('engine-watts');
  if (ratedWatts === null || !isTheOne(facts, 'portable')) return null;
  const fuel = facts.value('engine-fuel');
  const burns = isFuel(fuel) ? fuel : 'gasoline';
  const label = facts.told('engine-watts-for') && facts.is('engine-watts-for', 'this-fuel');
  const share = label ? 1 : fuelShare(burns);
  const watts = ratedWatts * siteShare(home) * share;
  const ordinary = facts.told('engine-kind') && facts.is('engine-kind', 'ordinary');
  const inverter = facts.told('engine-kind') && facts.is('engine-kind', 'inverter');
  const volts = facts.is('engine-volts', 'v240') ? 240 : 120;
  return {
    ratedWatts,
    step: {
      watts,
      startVa: watts * (ordinary ? START_PER_WATT : PEAK_PER_WATT),
      volts,
      startsByHalf: true,
    },
    volts,
    fuel: burns,
    fuelShare: share,
    // Without knowing, it burns like an ordinary one and lends like an inverter: both careful.
    type: inverter ? 'portable-inverter' : 'portable',
    startEnd: ordinary ? 'value' : 'high',
  };
}

/**
 * An inlet and transfer equipment stand here already: they are not bought again. Without a generator nobody was asked how it
 * connects, and a switch worked by hand is taken to have its inlet, which the electrician's look settles.
 */
export function inletThere({ facts }: Home): boolean {
  if (!facts.applies('engine-connect')) {
    return (
      facts.told('transfer-existing') && facts.is('transfer-existing', 'interlock', 'manual-switch')
    );
  }
  return (
    facts.told('engine-connect') &&
    facts.is('engine-connect', 'inlet') &&
    facts.told('transfer-existing') &&
    facts.is('transfer-existing', 'interlock', 'manual-switch', 'automatic')
  );
}
