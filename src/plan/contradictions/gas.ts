import { type Check, said } from './contradiction';

export const gasHeatWithoutGas: Check = (home) => {
  if (!said(home, 'heat-main', 'gas-furnace') || !said(home, 'gas-supply', 'none')) return null;
  return {
    id: 'gas-heat-without-gas',
    asks: 'What does the furnace burn? If it burns gas, there is a gas meter at the wall or a tank in the yard.',
    answers: [
      'A gas or propane furnace heats most of the home.',
      'The home has no piped gas and no propane tank.',
    ],
    questions: ['heat-main', 'gas-supply'],
  };
};
