import { type Check, said } from './contradiction';

export const gasHeatWithoutGas: Check = (home) => {
  if (!said(home, 'heat-main', 'gas-furnace') || !said(home, 'gas-supply', 'none')) return null;
  return {
    id: 'gas-heat-without-gas',
    questions: ['heat-main', 'gas-supply'],
  };
};
