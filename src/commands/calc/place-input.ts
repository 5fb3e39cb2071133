import { type Place, placeOf } from '../../tables/place/place';
import { sayPlace } from '../../words/en/place/say-place';
import type { Input, NumberInput } from './calculation';
import type { Values } from './values';

/** Where the home is. */
export const placeInputs: readonly Input[] = [
  {
    kind: 'text',
    key: 'zip',
    about: 'ZIP code of the home',
    pattern: /^\d{5}$/,
    form: 'five digits',
  },
  {
    kind: 'number',
    key: 'height',
    about: 'height of the home above the sea',
    unit: 'ft',
    from: -300,
    to: 15_000,
    optional: true,
  },
];

const METERS_PER_FOOT = 0.3048;

/** The place of those inputs, and the sentences that say how it was found and what is doubtful. */
export function placeIn(values: Values): { place: Place; notes: string[] } {
  const feet = values.numberOrNull('height');
  const elevationM = feet === null ? undefined : feet * METERS_PER_FOOT;
  const place = placeOf({ zip: values.word('zip'), elevationM });
  return { place, notes: sayPlace(place) };
}

/** How many synthetic years to draw, and the seed that gives the same ones again: those of the plan unless told. */
export const weatherInputs: readonly NumberInput[] = [
  {
    kind: 'number',
    key: 'years',
    about: 'synthetic years to draw',
    unit: 'years',
    from: 1,
    to: 200,
    whole: true,
    assumed: 100,
  },
  {
    kind: 'number',
    key: 'seed',
    about: 'another number draws other years',
    unit: '',
    from: 1,
    to: 2_000_000_000,
    whole: true,
    assumed: 20261125,
  },
];
