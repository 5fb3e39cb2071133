import { saySiting } from './say-siting';

/** What an electrician reads, in codes and figures of the plan. */
export const forElectrician = {
  siting: saySiting,
};
