import type { Place, PlaceStation, PlaceWarning } from '../../../tables/place/place';
import type { PlaceBasis, ZipProblem } from '../../../tables/place/where-zip';

/** How the place was found, which stations speak for it, and what makes that doubtful. */
export function sayPlace({
  basis,
  stations,
  warnings,
}: Pick<Place, 'basis' | 'stations' | 'warnings'>): string[] {
  return [sayPlaceBasis(basis), sayStations(stations), ...warnings.map(sayPlaceWarning)];
}

export function sayPlaceBasis(basis: PlaceBasis): string {
  switch (basis.code) {
    case 'zip':
      return `ZIP ${basis.zip} is placed at its middle.`;
    case 'prefix':
      return `${sayProblem(basis.problem)}, so the middle of the codes that begin with ${basis.prefix} stands in for it.`;
    case 'state':
      return `${sayProblem(basis.problem)}, so the middle of ${basis.stateName} stands in for your home.`;
    case 'country':
      return `${sayProblem(basis.problem)}, so the middle of the country stands in for your home; sun and weather may be far off.`;
  }
}

function sayProblem(problem: ZipProblem): string {
  switch (problem.code) {
    case 'no-zip':
      return 'No ZIP code was given';
    case 'three-digits-only':
      return `Of ZIP ${problem.prefix} only three digits were given`;
    case 'not-a-zip':
      return `"${problem.typed}" is not a ZIP code`;
    case 'military':
      return `ZIP ${problem.zip} is a military post office, which does not say where you live`;
    case 'not-listed':
      return `ZIP ${problem.zip} is not in our list`;
  }
}

/** Which stations, how far and how high. */
export function sayStations(stations: readonly PlaceStation[]): string {
  const each = stations.map((one) => {
    const height =
      one.heightDifferenceM === null
        ? `at ${feet(one.elevationM)}`
        : higherOrLower(one.heightDifferenceM);
    return `${one.near} (${miles(one.distanceKm)} away, ${height}, counted ${Math.round(one.share * 100)} %)`;
  });
  if (each.length === 1) return `Weather from a station near ${each[0]}.`;
  return `Weather from a mix of stations near ${each.join('; ')}, the nearest and likest counted most.`;
}

export function sayPlaceWarning(warning: PlaceWarning): string {
  switch (warning.code) {
    case 'far':
      return `The weather station that fits best is ${miles(warning.distanceKm)} away; sun and temperature at your home may differ.`;
    case 'other-height':
      return `The weather station that fits best is ${higherOrLower(warning.differenceM)} than your home; temperatures are moved by 3.6 °F for each 1,000 ft (6.5 °C a kilometer).`;
    case 'heights-differ':
      return `The stations near you differ by ${feet(warning.spreadM)} in height; tell us how high your home is and the weather will fit better.`;
  }
}

const M_PER_FT = 0.3048;
const KM_PER_MILE = 1.609344;

const feet = (m: number) => `${Math.round(m / M_PER_FT).toLocaleString('en-US')} ft`;

const higherOrLower = (m: number) => `${feet(Math.abs(m))} ${m < 0 ? 'lower' : 'higher'}`;

function miles(km: number): string {
  const whole = Math.round(km / KM_PER_MILE);
  return `${whole} ${whole === 1 ? 'mile' : 'miles'}`;
}
