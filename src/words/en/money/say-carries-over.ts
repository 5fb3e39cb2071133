import type { CarriesOver } from '../../../bill/lifecycle/staged-buying';
import { sayPart } from '../parts/say-part';

/** What of an earlier stage moves house, and what stays with the house. */
export function sayCarriesOver({ moves, stays }: CarriesOver): string[] {
  return [
    ...(moves.length > 0 ? [`Moves house with you: ${list(moves)}.`] : []),
    ...(stays.length > 0 ? [`Stays with the house: ${list(stays)}.`] : []),
  ];
}

const list = (parts: CarriesOver['moves']) =>
  parts
    .map(sayPart)
    .map((name) => name.charAt(0).toLowerCase() + name.slice(1))
    .join('; ');
