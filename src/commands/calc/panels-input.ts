import { usualPanels } from '../../home/solar/panel-traits';
import { combinedLoss } from '../../physics/panel/combined-loss';
import type { PanelTraits } from '../../physics/panel/panel-hours';
import { panelLosses } from '../../tables/panel-figures';
import type { Climate } from '../../tables/place/climate';
import type { Input } from './calculation';
import { percentInput } from './percent-input';
import type { Values } from './values';

const usualLossPercent = Math.round(100 * combinedLoss(panelLosses.rows.map((row) => row.share)));

/** How panels lie and what they lose. */
export const panelInputs: readonly Input[] = [
  {
    kind: 'number',
    key: 'tilt',
    about: 'slope of the panels, 0 flat, 90 upright',
    unit: 'deg',
    from: 0,
    to: 90,
    assumed: 25,
  },
  {
    kind: 'number',
    key: 'facing',
    about: 'compass bearing they face, 90 east, 180 south',
    unit: 'deg',
    from: 0,
    to: 360,
    assumed: 180,
  },
  percentInput({
    key: 'losses',
    about: 'dirt, shade, wiring and the like together',
    from: 0,
    to: 99,
    assumed: usualLossPercent,
  }),
  {
    kind: 'choice',
    key: 'snow',
    about: 'count snow on the panels in cold months',
    choices: ['yes', 'no'],
    assumed: 'yes',
  },
];

/** What lies between the sun and the inverter, by those inputs. */
export function panelsIn(values: Values, climate: Climate): PanelTraits {
  return usualPanels({
    lossShare: values.number('losses') / 100,
    tiltDeg: values.number('tilt'),
    monthMeanC: values.word('snow') === 'yes' ? climate.meanC : null,
  });
}
