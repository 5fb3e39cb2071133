import type { RouteTitle } from '../../kinds/route-title';
import type { GeneratorFuel } from '../../tables/fuels';
import type { EquipmentClass } from '../../tables/prices/equipment-costs';

/** What a part is called, as a code with its size: kWh, kW, W or gal as the key says. */
export type PartName =
  | { readonly code: PlainPart }
  | {
      readonly code: 'own-battery' | 'own-pack' | 'pack' | 'small-battery' | 'one-job-battery';
      readonly kwh: number;
    }
  | {
      readonly code:
        | 'own-generator'
        | 'own-standby'
        | 'own-panels'
        | 'portable-generator'
        | 'standby-generator'
        | 'roof-panels';
      readonly kw: number;
    }
  /** `inverterWatts`: null where it goes by the battery. */
  | {
      readonly code: 'battery-with-inverter';
      readonly kwh: number;
      readonly inverterWatts: number | null;
    }
  /** Cans for so much fuel; `more`: some is kept already. */
  | {
      readonly code: 'cans';
      readonly gallons: number;
      readonly more: boolean;
      readonly fuel: GeneratorFuel;
    }
  /** All of a route, at the price of the household's own quote for it. */
  | { readonly code: 'quoted'; readonly route: RouteTitle };

/** A part that needs no size: what its class is called, or one of these. */
export type PlainPart =
  | EquipmentClass
  | 'own-cords'
  | 'own-inlet'
  | 'own-transfer-switch'
  | 'inlet-of-120'
  | 'inlet-to-charger'
  | 'connection-to-tank'
  | 'propane-cylinders';
