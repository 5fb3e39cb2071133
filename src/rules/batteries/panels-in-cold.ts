import { solarRow } from '../../home/solar/solar-row';
import { careful, type Rule, yes } from '../rule';

/** Panels in a row that feed a power pack: cold raises their volts over what the pack takes. */
export const panelsInCold: Rule = {
  id: 'panels-in-cold',
  applies: (home) => {
    const row = solarRow(home);
    if (row === null || !row.feedsPack) return null;
    return row.inRow === null
      ? careful('power-pack-panels', 'solar-row')
      : yes('panels-row-feed-power');
  },
};
