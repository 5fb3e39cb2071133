import { gasHere } from '../../home/heat/gas-here';
import type { Home } from '../../home/home';

/** Unless told that there is none, a house has gas: somebody must know where it is shut off. */
export const mayHaveGas = ({ facts }: Pick<Home, 'facts'>): boolean => gasHere(facts) !== 'none';
