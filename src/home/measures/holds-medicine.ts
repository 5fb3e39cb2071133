import type { Home, Load } from '../home';
import { closedBy } from './not-where';

/** A refrigerator in which medicine is kept, or may be: not told counts as yes. */
export const holdsMedicine = ({ facts }: Home, { id }: Load): boolean =>
  id === 'fridge' && closedBy(facts, ['medicine-in-fridge']) !== null;
