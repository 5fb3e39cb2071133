import type { ChoiceId } from '#compiled/question-ids.js';
import type { Home } from '../home/home';
import { type LeaveAt, leaveAt } from '../home/people/leave-at';
import { practice } from '../tables/practice-figures';

export type LifeTeam = Exclude<ChoiceId<'device-team'>, 'none'>;

/** What comes before any purchase where somebody cannot live without a powered device. */
export interface LifeFirst {
  /** Told that somebody depends on one; false: nobody said, so the careful branch. */
  readonly told: boolean;
  /** Who has not been told yet, to call today. */
  readonly callToday: readonly LifeTeam[];
  /** Hours of the device's own battery as told, and as counted: half until it was tested, none while not known. */
  readonly ownBattery: {
    readonly toldHours: number | null;
    readonly tested: boolean;
    readonly countedHours: number;
  };
  /** Ready ways that need nothing from this house. */
  readonly secondWays: readonly Exclude<ChoiceId<'second-source'>, 'none'>[];
  /** The trip as told or, while not known, three hours; h. */
  readonly tripHours: number;
  readonly tripTold: boolean;
  /** Roads out of here; one, or not known, asks for more hours in hand. */
  readonly roads: LeaveAt['roads'];
  /** What must still be carried when leaving: three times the trip plus two hours, and more with one road out; h. */
  readonly leaveAtHours: number;
  /** What the device's own battery is counted as is less than that: leave when the power fails, or before. */
  readonly leaveAtOnce: boolean;
}

const team: readonly LifeTeam[] = ['clinician', 'supplier', 'power-company', 'fire-department'];
const ways = ['cylinders', 'spare-batteries', 'hand-powered', 'other-place'] as const;

/** Nobody has tried how long it runs: half of what is told. */
const UNTESTED_SHARE = practice('untested-battery-share');

/** Null where nobody's life hangs on a device; not known counts as if it did. */
export function lifeFirst(home: Home): LifeFirst | null {
  if (home.lifeSupport === 'no') return null;
  const { facts } = home;
  const toldHours = facts.told('device-battery-hours')
    ? facts.number('device-battery-hours')
    : null;
  const tested = facts.told('device-battery-tested') && facts.is('device-battery-tested', 'yes');
  const countedHours = (toldHours ?? 0) * (tested ? 1 : UNTESTED_SHARE);
  const { tripHours, tripTold, roads, hours: leaveAtHours } = leaveAt(facts);
  return {
    told: home.lifeSupport === 'yes',
    callToday: team.filter((one) => !(facts.told('device-team') && facts.has('device-team', one))),
    ownBattery: { toldHours, tested, countedHours },
    secondWays: ways.filter(
      (one) => facts.told('second-source') && facts.has('second-source', one),
    ),
    tripHours,
    tripTold,
    roads,
    leaveAtHours,
    leaveAtOnce: countedHours < leaveAtHours,
  };
}
