import { isOwned } from '../../routes/costs';
import type { Route } from '../../routes/route';
import type { EquipmentClass } from '../../tables/prices/equipment-costs';

/** What of a route's equipment the household has, as it told it; null where it has none that counts. */
export interface ThereAlready {
  /** On its label, kWh. */
  readonly batteryKwh: number | null;
  readonly solarKw: number | null;
  /** On its label, kW; a portable or a fixed one. */
  readonly generatorKw: number | null;
  /** What is to be bought, and so quoted, beside it. */
  readonly buys: { readonly battery: boolean; readonly solar: boolean };
}

/** What is there and what is bought, by the parts of the route: nobody quotes what is there. */
export function thereAlready({ parts }: Pick<Route, 'parts'>): ThereAlready {
  const of = (...classes: EquipmentClass[]) =>
    parts.filter(({ equipmentClass }) => classes.includes(equipmentClass));
  const label = (unit: 'kw' | 'kwh', ...classes: EquipmentClass[]): number | null => {
    const called = of(...classes).find(isOwned)?.called;
    const sizes: { readonly code: string; kw?: number; kwh?: number } | undefined = called;
    return sizes?.[unit] ?? null;
  };
  const buys = (equipmentClass: EquipmentClass) =>
    of(equipmentClass).some((part) => !isOwned(part));
  return {
    batteryKwh: label('kwh', 'battery'),
    solarKw: label('kw', 'solar'),
    generatorKw: label('kw', 'portable-engine', 'standby-engine'),
    buys: { battery: buys('battery'), solar: buys('solar') },
  };
}
