import type { ChoiceId, QuestionId } from '#compiled/question-ids.js';
import type { HouseholdLoadId } from '../../tables/household-loads';
import type { Load } from '../home';
import { maskForLife } from '../people/life-support';
import { asFigure, type LoadContext } from './context';
import { byHoursTold } from './hours-told';
import type { LoadName } from './load-name';
import { makeLoad } from './make-load';
import { smallDevices } from './small-devices';

interface Device {
  readonly ticked: ChoiceId<'medical-devices'>;
  readonly row: HouseholdLoadId;
  readonly watts: QuestionId;
  readonly hours: QuestionId;
  /** Where it is not called as its row. */
  readonly called?: LoadName;
  readonly life: boolean;
}

/** Devices with questions of their own. A heart pump is not here: it may not run from a backup at all. */
const devices: readonly Device[] = [
  {
    ticked: 'oxygen-concentrator',
    row: 'oxygen-concentrator',
    watts: 'oxygen-watts',
    hours: 'oxygen-hours',
    life: true,
  },
  {
    ticked: 'ventilator',
    row: 'ventilator',
    watts: 'ventilator-watts',
    hours: 'ventilator-hours',
    life: true,
  },
  {
    ticked: 'cpap',
    row: 'cpap-heated',
    watts: 'cpap-watts',
    hours: 'cpap-hours',
    called: { code: 'cpap' },
    life: false,
  },
  {
    ticked: 'dialysis',
    row: 'dialysis',
    watts: 'dialysis-watts',
    hours: 'dialysis-hours',
    life: true,
  },
];

/** Powered medical devices: always first, their figures for the supplier to confirm. */
export function medical(context: LoadContext): Load[] {
  const { facts } = context;
  const own = devices
    .filter((d) => facts.has('medical-devices', d.ticked))
    .map((d) => deviceLoad(context, d));
  const fridge =
    facts.has('medical-devices', 'fridge-medicine') && facts.number('fridge-count') === 0
      ? [makeLoad('medicine-fridge', { rank: 'must', restsOn: ['medical-devices'] })]
      : [];
  return [...own, ...smallDevices(context), ...fridge];
}

function deviceLoad(context: LoadContext, device: Device): Load {
  const runningWatts = asFigure(context, device.watts, 'W', true) ?? undefined;
  const load = makeLoad(device.row, {
    id: device.ticked,
    called: device.called,
    rank: 'must',
    life: device.life || (device.ticked === 'cpap' && maskForLife(context.facts)),
    runningWatts,
    restsOn: ['medical-devices', device.watts],
  });
  return byHoursTold(context, load, device.hours);
}
