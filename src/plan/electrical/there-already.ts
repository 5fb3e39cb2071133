import type { PartName } from '../../bill/lifecycle/part-name';
import type { Route } from '../../routes/route';

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
  const names = parts.map(({ called }) => called);
  const label = (code: PartName['code'], unit: 'kw' | 'kwh'): number | null => {
    const found: (PartName & { kw?: number; kwh?: number }) | undefined = names.find(
      (name) => name.code === code,
    );
    return found?.[unit] ?? null;
  };
  const batteryKwh = label('own-battery', 'kwh');
  const solarKw = label('own-panels', 'kw');
  const buys = (equipmentClass: 'battery' | 'solar', there: number | null) =>
    parts.filter((part) => part.equipmentClass === equipmentClass).length >
    (there === null ? 0 : 1);
  return {
    batteryKwh,
    solarKw,
    generatorKw: label('own-generator', 'kw') ?? label('own-standby', 'kw'),
    buys: { battery: buys('battery', batteryKwh), solar: buys('solar', solarKw) },
  };
}
