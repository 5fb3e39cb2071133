import type { NumberInput } from './calculation';

/** A share typed in percent, from 1 to 100 unless told: "0.55" is then refused, not read as half a percent. */
export function percentInput(given: {
  key: string;
  about: string;
  assumed?: number;
  from?: number;
  to?: number;
}): NumberInput {
  return { kind: 'number', unit: '%', from: 1, to: 100, ...given };
}
