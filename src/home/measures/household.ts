import type { MeasureRow } from '../../tables/measures';
import type { Home, Load } from '../home';

/** What a measure is worked out from. */
export type Household = Pick<Home, 'facts' | 'site' | 'people' | 'goalHours' | 'goalSeasons'>;

/** The loads of a household with a measure taken; the same list where it changes nothing. */
export type Change = (of: Household, loads: readonly Load[], row: MeasureRow) => readonly Load[];
