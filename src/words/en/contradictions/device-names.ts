import type { HealthDevice, Motor } from '../../../plan/contradictions/contradiction';

/** Motors at the start of a sentence. */
export const motorNames: Readonly<Record<Motor, string>> = {
  'water-pump': 'The water pump',
  'heat-pump': 'The heat pump',
  'air-conditioner': 'The air conditioner',
};

export const healthDeviceNames: Readonly<Record<HealthDevice, string>> = {
  oxygen: 'oxygen',
  ventilator: 'ventilator',
  cpap: 'cpap',
  dialysis: 'dialysis',
  'other-medical': 'other medical',
};
