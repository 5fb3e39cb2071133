import type { GeneratorSitingWhy } from '../../physics/siting/generator-siting';
import type { StorageFindingId } from '../../physics/siting/storage-unit';
import type { Cite } from '../../quantity/cite';

/** What a place needs, or what stands against it, where it takes no figure. */
export type PlainSiting =
  | 'battery-place-not-known'
  | 'battery-signs'
  | 'battery-disconnect'
  | 'battery-listed'
  | 'heat-detector'
  | 'smoke-alarm'
  | 'finished-walls'
  | 'flooded-basement'
  | 'above-high-water'
  | 'co-alarms'
  | 'noise'
  | 'stop-outside'
  | 'propane-outdoors'
  | 'rapid-shutdown';

/** The same with the figures of this home and of the tables; `words` says it. */
export type Siting =
  | { readonly code: PlainSiting }
  /** What stands against a battery unit: kWh or in; null where it has no figure. */
  | { readonly code: StorageFindingId; readonly limit: number | null }
  /** An unheated place: the air over a usual year, °F. */
  | { readonly code: 'air-range'; readonly coldF: number; readonly hotF: number }
  | {
      readonly code: 'charging-below-freezing';
      readonly coldF: number;
      readonly hotF: number;
      /** Months in which a usual night is below what charging allows. */
      readonly coldMonths: number;
      readonly leastF: number;
    }
  | {
      readonly code: 'generator-distance';
      readonly leastFt: number;
      readonly why: GeneratorSitingWhy;
    }
  /** `overGal`: what is kept, where that is more than the usual limit. */
  | {
      readonly code: 'gasoline-kept';
      readonly canGal: number;
      readonly totalGal: number;
      readonly overGal: number | null;
    }
  | { readonly code: 'roof-paths'; readonly pathIn: number };

/** One thing to check about where the equipment stands. */
export type SitingPoint = Siting & {
  /** `no`: not so. `ask`: the department or a measurement decides. `needed`: must be there. `kept`: as answered, the distance is kept. */
  readonly verdict: 'no' | 'ask' | 'needed' | 'kept';
  readonly cite: Cite;
};
