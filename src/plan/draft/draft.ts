import type { Season } from '../../home/home';
import type { LoadName } from '../../home/loads/load-name';
import type { Figure } from '../../quantity/figure';
import type { Contradiction } from '../contradictions/contradiction';
import type { Glance } from './glance';

/** A load as the draft beside the question shows it. */
export interface DraftLoad {
  readonly id: string;
  readonly called: LoadName;
  readonly rank: 'must' | 'good' | 'wait';
  readonly runningWatts: Figure;
  /** The household told of it; false: counted because nobody knows. */
  readonly told: boolean;
}

/** What the answers add up to so far. A sum is null while no load is named. */
export interface Draft {
  /** The household has ranked its loads; before that a load's rank says nothing. */
  readonly ranked: boolean;
  readonly loads: readonly DraftLoad[];
  /** Loads that must keep running, together, W. */
  readonly runningWatts: Figure | null;
  /** The same with the hardest start on top, VA. */
  readonly startVa: Figure | null;
  /** Energy of one day in the season asked for, must keep running only, kWh/day. */
  readonly kwhPerDay: Figure | null;
  /** The season on whose hard day those kilowatt-hours are used. */
  readonly season: Season;
  /** How many answers are "not sure" so far. */
  readonly unsureCount: number;
  /** The plan these answers would give. */
  readonly glance: Glance;
  /** Answers that cannot both be right, asked about as soon as both are given. */
  readonly toSettle: readonly Contradiction[];
}
