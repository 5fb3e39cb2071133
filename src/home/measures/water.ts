import type { MeasureRow } from '../../tables/measures';
import { GALLONS_A_PERSON } from '../loads/stored-water';
import type { Change, Household } from './household';
import { changing, lessened, shapeOfHours } from './lessen';

/** Water still to be stored for the goal, gal: no more than jugs and a drum hold. */
export function gallonsToStore({ facts, people, goalHours }: Household, row: MeasureRow): number {
  const stored = facts.told('water-stored') ? (facts.number('water-stored') ?? 0) : 0;
  const need = GALLONS_A_PERSON * Math.max(1, people.value) * Math.max(1, goalHours.value / 24);
  return Math.max(0, Math.min(row.mostGal!, Math.ceil(need - stored - 1e-9)));
}

/** Jugs filled ahead: where they hold what the goal takes the pump rests, else it runs at set times for what is left. */
export const storedWater: Change = (of, loads, row) => {
  const gallons = gallonsToStore(of, row);
  if (gallons < row.fewestGal!) return loads;
  const { facts, people, goalHours } = of;
  const need = GALLONS_A_PERSON * Math.max(1, people.value) * Math.max(1, goalHours.value / 24);
  const stored = facts.told('water-stored') ? (facts.number('water-stored') ?? 0) : 0;
  // Of what the pump runs today, which rests already on what is stored.
  const left = Math.max(0, 1 - gallons / Math.max(need - stored, gallons));
  return changing(
    loads,
    (load) => load.id === 'well',
    (load) =>
      left === 0
        ? null
        : { ...lessened(load, [left, left, 1], row), shape: shapeOfHours(row.hours!) },
  );
};

/** The tank is heated once a day. */
export const hotWaterOnce: Change = ({ facts }, loads, row) =>
  facts.is('water-heater', 'electric-tank', 'heat-pump-tank')
    ? changing(
        loads,
        (load) => load.id === 'water-heater' && !load.offInOutage,
        (load) => ({ ...lessened(load, row.share!, row), shape: shapeOfHours(row.hours!) }),
      )
    : loads;
