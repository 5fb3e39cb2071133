import type { Point } from './earth-distance';
import { stateName } from './state-name';
import { middleOfZips, zipMiddle } from './zip-middles';
import { readPrefix, readZip, stateOfCode, stateOfZip } from './zip-state';

/** A point for the household, how sure it is, and the sentence that says so. */
export interface Where extends Point {
  foundBy: 'zip' | 'prefix' | 'state' | 'country';
  state: string | null;
  basis: string;
}

/** About the middle of the contiguous states, by the Geological Survey. */
const MIDDLE_OF_COUNTRY: Point = { latDeg: 39.83, lonDeg: -98.58 };

/**
 * The point a ZIP code stands for. Never fails: an unlisted code takes the middle of the codes that
 * share its first three digits, then the middle of its state (or of `state`, if given), then the middle
 * of the country; `basis` says which in a sentence for the household.
 */
export function whereZip(zip: string, state?: string): Where {
  const digits = readZip(zip);
  if (digits !== null) {
    const found = byZip(digits) ?? byPrefix(digits);
    if (found !== null) return found;
  }
  const prefix = readPrefix(zip);
  const shared =
    prefix === null ? null : byPrefix(prefix, `Of ZIP ${prefix} only three digits were given`);
  if (shared !== null) return shared;
  const home = state?.trim().toUpperCase() ?? stateOfZip(zip);
  const middle = home === null ? null : middleOfZips((code) => stateOfCode(code) === home);
  const problem = whatIsWrong(zip, digits);
  if (home !== null && middle !== null) {
    const basis = `${problem}, so the middle of ${stateName(home)} stands in for your home.`;
    return { ...middle, foundBy: 'state', state: home, basis };
  }
  const basis = `${problem}, so the middle of the country stands in for your home; sun and weather may be far off.`;
  return { ...MIDDLE_OF_COUNTRY, foundBy: 'country', state: null, basis };
}

function byZip(digits: string): Where | null {
  const middle = zipMiddle(Number(digits));
  if (middle === null) return null;
  const basis = `ZIP ${digits} is placed at its middle.`;
  return { ...middle, foundBy: 'zip', state: stateOfZip(digits), basis };
}

function byPrefix(digits: string, why = `ZIP ${digits} is not in our list`): Where | null {
  const prefix = digits.slice(0, 3);
  const state = stateOfZip(digits);
  if (state === null || state === 'MIL') return null;
  const middle = middleOfZips((code) => Math.floor(code / 100) === Number(prefix));
  if (middle === null) return null;
  const basis = `${why}, so the middle of the codes that begin with ${prefix} stands in for it.`;
  return { ...middle, foundBy: 'prefix', state, basis };
}

function whatIsWrong(zip: string, digits: string | null): string {
  if (digits === null) {
    return zip.trim() === '' ? 'No ZIP code was given' : `"${zip.trim()}" is not a ZIP code`;
  }
  if (stateOfZip(digits) === 'MIL') {
    return `ZIP ${digits} is a military post office, which does not say where you live`;
  }
  return `ZIP ${digits} is not in our list`;
}
