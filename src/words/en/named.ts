import type { Home } from '../../home/home';

/** The home whose loads are called by their names. */
export type Named = Pick<Home, 'loads'>;
