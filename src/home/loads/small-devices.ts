import type { ChoiceId } from '#compiled/question-ids.js';
import type { Figure } from '../../quantity/figure';
import { addFigures } from '../../quantity/figure-arithmetic';
import type { HouseholdLoadId } from '../../tables/household-loads';
import { type Load, type Season, seasons } from '../home';
import { asFigure, type LoadContext } from './context';
import { byHoursTold } from './hours-told';
import { makeLoad } from './make-load';

type NamedByLoad = 'running-power' | 'starting-demand' | 'energy';

interface SmallDevice {
  readonly ticked: ChoiceId<'medical-devices'>;
  readonly row: HouseholdLoadId;
  readonly name: string;
  readonly life: boolean;
}

/** Devices whose watts and hours are asked together. */
const small: readonly SmallDevice[] = [
  { ticked: 'feeding-pump', row: 'feeding-pump', name: 'Pump for food or medicine', life: true },
  { ticked: 'suction', row: 'suction', name: 'Suction or cough machine', life: true },
  { ticked: 'nebuliser', row: 'nebuliser', name: 'Nebulizer', life: false },
  { ticked: 'power-chair', row: 'power-wheelchair', name: 'Power wheelchair charger', life: false },
  { ticked: 'medical-bed', row: 'medical-bed', name: 'Medical bed or lift', life: false },
  { ticked: 'other-device', row: 'health-device', name: 'Another health device', life: true },
];

/** One load for all of them, called by what was named: at the watts and hours told for them together, each by its own row until then. */
export function smallDevices(context: LoadContext): Load[] {
  const named = small.filter(({ ticked }) => context.facts.has('medical-devices', ticked));
  const first = named[0];
  if (first === undefined) return [];
  const as = {
    id: 'other-medical',
    name: calledTogether(named),
    rank: 'must',
    life: named.some(({ life }) => life),
    restsOn: ['medical-devices', 'other-medical-watts', 'other-medical-hours'],
  } as const;
  const runningWatts = asFigure(context, 'other-medical-watts', 'W', true) ?? undefined;
  const together =
    runningWatts === undefined && named.length > 1 ? inAll(named, as.name) : { runningWatts };
  const load = makeLoad(named.length === 1 ? first.row : 'health-device', { ...as, ...together });
  return [byHoursTold(context, load, 'other-medical-hours')];
}

/** What several devices use by their rows: each on, and each started, beside the others. */
function inAll(named: readonly SmallDevice[], name: string) {
  const loads = named.map(({ row }) => makeLoad(row, { rank: 'must', restsOn: [] }));
  const sum = (unit: string, code: NamedByLoad, of: (load: Load) => Figure) =>
    addFigures(loads.map(of), { unit, name: { code, load: name } });
  return {
    runningWatts: sum('W', 'running-power', (load) => load.runningWatts),
    startVa: sum('VA', 'starting-demand', (load) => load.startVa ?? load.runningVa),
    kwhPerDay: Object.fromEntries(
      seasons.map((season) => [season, sum('kWh/day', 'energy', (load) => load.kwhPerDay[season])]),
    ) as Record<Season, Figure>,
  };
}

/** "Suction or cough machine with nebulizer, power wheelchair charger and medical bed or lift". */
function calledTogether(named: readonly SmallDevice[]): string {
  const [first, ...more] = named.map(({ name }, i) => (i === 0 ? name : lower(name)));
  const last = more.pop();
  if (last === undefined) return first!;
  const others = more.length === 0 ? last : [more.join(', '), last].join(' and ');
  return [first, others].join(' with ');
}

const lower = (name: string) => name.charAt(0).toLowerCase() + name.slice(1);
