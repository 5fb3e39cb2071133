import type { Calculation } from './calculation';

/** Every computation by name. Each is loaded when it is asked for, with the tables it needs and no others. */
export const calculations: Readonly<Record<string, () => Promise<Calculation>>> = {
  'motor-start': async () => (await import('./computations/motor-start')).motorStart,
  'pump-power': async () => (await import('./computations/pump-power')).pumpPowerCalculation,
  'wire-drop': async () => (await import('./computations/wire-drop')).wireDrop,
  'wire-size': async () => (await import('./computations/wire-size')).wireSize,
  'cooling-power': async () => (await import('./computations/cooling-power')).coolingPower,
  'battery-runtime': async () => (await import('./computations/battery-runtime')).batteryRuntime,
  'charging-time': async () => (await import('./computations/charging-time')).chargingTimeOf,
  'generator-fuel': async () => (await import('./computations/generator-fuel')).generatorFuel,
  busbar: async () => (await import('./computations/busbar')).busbar,
  'service-load': async () => (await import('./computations/service-load')).serviceLoadOf,
  'string-voltage': async () => (await import('./computations/string-voltage')).stringVoltage,
  'sun-position': async () => (await import('./computations/sun-position')).sunPositionOf,
  'roof-yield': async () => (await import('./computations/roof-yield')).roofYieldOf,
  'weather-year': async () => (await import('./computations/weather-year')).weatherYear,
  'ride-through': async () => (await import('./computations/ride-through')).rideThrough,
  'transfer-time': async () => (await import('./computations/transfer-time')).transferTime,
  'largest-start': async () => (await import('./computations/largest-start')).largestStartOf,
  'outage-outlook': async () => (await import('./computations/outage-outlook')).outageOutlookOf,
  bill: async () => (await import('./computations/bill')).bill,
  'battery-savings': async () => (await import('./computations/battery-savings')).batterySavings,
  'kept-charge': async () => (await import('./computations/kept-charge')).keptCharge,
  'life-cycle-cost': async () => (await import('./computations/life-cycle-cost')).lifeCycleCostOf,
};
