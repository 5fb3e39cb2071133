import { stateName } from './state-name';
import { stationTown } from './station-towns';

/** A weather station as a household knows the place: "Concordia, Kansas". */
export const sayStation = ({ id, state }: { id: string; state: string }): string =>
  `${stationTown(id)}, ${stateName(state)}`;
