import type { ChoiceId, QuestionId } from '#compiled/question-ids.js';
import { type Figure, figure } from '../../quantity/figure';
import { formula } from '../../quantity/figure-arithmetic';
import type { HouseholdLoadId } from '../../tables/household-loads';
import { loadShape } from '../../tables/load-shapes';
import type { Load } from '../home';
import { asFigure, type LoadContext } from './context';
import { makeLoad } from './make-load';

interface Device {
  readonly ticked: ChoiceId<'medical-devices'>;
  readonly row: HouseholdLoadId;
  readonly watts: QuestionId;
  readonly name: string;
  readonly life: boolean;
}

/** Devices with a question of their own. A heart pump is not here: it may not run from a backup at all. */
const devices: readonly Device[] = [
  {
    ticked: 'oxygen-concentrator',
    row: 'oxygen-concentrator',
    watts: 'oxygen-watts',
    name: 'Oxygen concentrator',
    life: true,
  },
  {
    ticked: 'ventilator',
    row: 'ventilator',
    watts: 'ventilator-watts',
    name: 'Ventilator',
    life: true,
  },
  { ticked: 'cpap', row: 'cpap-heated', watts: 'cpap-watts', name: 'CPAP', life: false },
  {
    ticked: 'dialysis',
    row: 'dialysis',
    watts: 'dialysis-watts',
    name: 'Home dialysis',
    life: true,
  },
];

const others: readonly ChoiceId<'medical-devices'>[] = [
  'feeding-pump',
  'suction',
  'nebuliser',
  'power-chair',
  'medical-bed',
  'other-device',
];

/** Powered medical devices: always first, their figures for the supplier to confirm. */
export function medical(context: LoadContext): Load[] {
  const { facts } = context;
  const own = devices
    .filter((d) => facts.has('medical-devices', d.ticked))
    .map((d) => deviceLoad(context, d));
  const rest = facts.has('medical-devices', ...others) ? [otherDevices(context)] : [];
  const fridge =
    facts.has('medical-devices', 'fridge-medicine') && facts.number('fridge-count') === 0
      ? [makeLoad('medicine-fridge', { rank: 'must', restsOn: ['medical-devices'] })]
      : [];
  return [...own, ...rest, ...fridge];
}

function deviceLoad(context: LoadContext, device: Device): Load {
  const runningWatts =
    asFigure(context, device.watts, 'W', `power of the ${device.name}`, true) ?? undefined;
  const load = makeLoad(device.row, {
    id: device.ticked,
    name: device.name,
    rank: 'must',
    life: device.life,
    runningWatts,
    restsOn: ['medical-devices', device.watts],
  });
  if (device.ticked !== 'oxygen-concentrator') return load;
  const hours = asFigure(context, 'oxygen-hours', 'h', 'hours a day on oxygen');
  if (hours === null) return load;
  const day = dayOf(load.runningWatts, hours);
  return {
    ...load,
    kwhPerDay: { winter: day, summer: day, mild: day },
    shape: loadShape('flat'),
    restsOn: [...load.restsOn, 'oxygen-hours'],
  };
}

function dayOf(watts: Figure, hours: Figure): Figure {
  return figure({
    value: (watts.value * hours.value) / 1000,
    low: (watts.low * hours.low) / 1000,
    high: (watts.high * hours.high) / 1000,
    unit: 'kWh/day',
    name: 'energy of the device',
    source: formula('power x hours a day', [watts, hours]),
  });
}

/** The other devices together, at the watts told, from a few hours to the whole day. */
function otherDevices(context: LoadContext): Load {
  const watts = asFigure(context, 'other-medical-watts', 'W', 'power of the other devices', true);
  const load = makeLoad('medical-bed', {
    id: 'other-medical',
    name: 'Other medical devices',
    rank: 'must',
    life: context.facts.has('medical-devices', 'suction', 'feeding-pump', 'other-device'),
    runningWatts: watts ?? undefined,
    restsOn: ['medical-devices', 'other-medical-watts'],
  });
  const hours = figure({
    value: 8,
    low: 1,
    high: 24,
    unit: 'h',
    name: 'hours a day',
    source: { kind: 'assumed', label: 'assumed until the supplier says' },
  });
  const day = dayOf(load.runningWatts, hours);
  return { ...load, kwhPerDay: { winter: day, summer: day, mild: day } };
}
