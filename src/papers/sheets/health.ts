import { leavingForPeople } from '../../plan/leaving-point';
import { healthDevices } from '../../plan/on-the-day/health-devices';
import type { Plan } from '../../plan/plan';
import { LENGTHS } from '../../plan/ride-through/lengths';
import type { Words } from '../../words/words';
import { type Block, section } from '../document/block';
import type { Sheet } from './sheet';

/** The sheet of a powered device, apart from all others; null where no device was told. */
export function healthSheet(plan: Plan, words: Words): Sheet | null {
  const { home, lifeFirst } = plan;
  const devices = healthDevices(plan);
  if (devices.length === 0) return null;
  const [season] = home.goalSeasons;
  return {
    id: 'health',
    title: words.sheets.health.title,
    purpose: words.sheets.health.purpose,
    blocks: [
      ...section(words.sheets.health.devices, {
        kind: 'table',
        head: words.sheets.health.head,
        rows: devices.map((load) => {
          const day = load.kwhPerDay[season ?? 'mild'];
          const { low, value, high } = load.runningWatts;
          return [
            words.loadName(plan.home, load.id),
            words.range(low, value, high, 'W'),
            words.range(day.low, day.value, day.high, 'kWh'),
          ];
        }),
      }),
      ...section(words.sheets.health.carries, { kind: 'bullets', items: carried(plan, words) }),
      ...(lifeFirst === null
        ? []
        : section(words.sheets.health.first, {
            kind: 'bullets',
            items: words.lifeFirst(lifeFirst),
          })),
      ...section(words.sheets.health.leave, {
        kind: 'bullets',
        items: words.leavings(leavingForPeople(home)),
      }),
      ...section(words.sheets.health.clinician, {
        kind: 'blanks',
        names: words.sheets.health.clinicianNames,
      }),
      ...section(words.sheets.health.place, {
        kind: 'blanks',
        names: words.sheets.health.placeNames,
      }),
    ] satisfies Block[],
  };
}

function carried({ healthFirst, home }: Plan, words: Words): string[] {
  const names = (ids: readonly string[]) =>
    words.listOf(
      home.loads
        .filter(({ id }) => ids.includes(id))
        .map(({ called }) => words.inSentence(words.called(called))),
    );
  if (healthFirst === null || healthFirst.carried.length === 0)
    return [words.sheets.health.nothing];
  const hours = healthFirst.covered?.carefulHours ?? null;
  const span =
    hours === null
      ? null
      : hours >= LENGTHS.at(-1)!
        ? words.sheets.reading.twoWeeks
        : words.quantity(Math.round(hours), 'h');
  return [
    ...(span === null
      ? []
      : [words.sheets.health.covered(words.sentenceCase(names(healthFirst.carried)), span)]),
    ...(healthFirst.missed.length === 0
      ? []
      : [words.sheets.health.notCarried(names(healthFirst.missed))]),
  ];
}
