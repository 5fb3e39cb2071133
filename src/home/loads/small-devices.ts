import type { Figure } from '../../quantity/figure';
import { addFigures } from '../../quantity/figure-arithmetic';
import type { HouseholdLoadId } from '../../tables/household-loads';
import { type Load, type Season, seasons } from '../home';
import { asFigure, type LoadContext } from './context';
import { byHoursTold } from './hours-told';
import type { LoadName, SmallDeviceId } from './load-name';
import { makeLoad } from './make-load';

type NamedByLoad = 'running-power' | 'starting-demand' | 'energy';

interface SmallDevice {
  readonly ticked: SmallDeviceId;
  readonly row: HouseholdLoadId;
  readonly life: boolean;
}

/** Devices whose watts and hours are asked together. */
const small: readonly SmallDevice[] = [
  { ticked: 'feeding-pump', row: 'feeding-pump', life: true },
  { ticked: 'suction', row: 'suction', life: true },
  { ticked: 'nebuliser', row: 'nebuliser', life: false },
  { ticked: 'power-chair', row: 'power-wheelchair', life: false },
  { ticked: 'medical-bed', row: 'medical-bed', life: false },
  { ticked: 'other-device', row: 'health-device', life: true },
];

/** One load for all of them, called by what was named: at the watts and hours told for them together, each by its own row until then. */
export function smallDevices(context: LoadContext): Load[] {
  const named = small.filter(({ ticked }) => context.facts.has('medical-devices', ticked));
  const first = named[0];
  if (first === undefined) return [];
  const as = {
    id: 'other-medical',
    called: { code: 'devices', ticked: named.map(({ ticked }) => ticked) },
    rank: 'must',
    life: named.some(({ life }) => life),
    restsOn: ['medical-devices', 'other-medical-watts', 'other-medical-hours'],
  } as const;
  const runningWatts = asFigure(context, 'other-medical-watts', 'W', true) ?? undefined;
  const together =
    runningWatts === undefined && named.length > 1 ? inAll(named, as.called) : { runningWatts };
  const load = makeLoad(named.length === 1 ? first.row : 'health-device', { ...as, ...together });
  return [byHoursTold(context, load, 'other-medical-hours')];
}

/** What several devices use by their rows: each on, and each started, beside the others. */
function inAll(named: readonly SmallDevice[], called: LoadName) {
  const loads = named.map(({ row }) => makeLoad(row, { rank: 'must', restsOn: [] }));
  const sum = (unit: string, code: NamedByLoad, of: (load: Load) => Figure) =>
    addFigures(loads.map(of), { unit, name: { code, load: called } });
  return {
    runningWatts: sum('W', 'running-power', (load) => load.runningWatts),
    startVa: sum('VA', 'starting-demand', (load) => load.startVa ?? load.runningVa),
    kwhPerDay: Object.fromEntries(
      seasons.map((season) => [season, sum('kWh/day', 'energy', (load) => load.kwhPerDay[season])]),
    ) as Record<Season, Figure>,
  };
}
