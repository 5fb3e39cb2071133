import type { Point } from './earth-distance';
import { stateName } from './state-name';
import { middleOfZips, zipMiddle } from './zip-middles';
import { readPrefix, readZip, stateOfCode, stateOfZip } from './zip-state';

/** Why a ZIP code as it was typed gives no place of its own. */
export type ZipProblem =
  | { readonly code: 'no-zip' }
  | { readonly code: 'three-digits-only'; readonly prefix: string }
  | { readonly code: 'not-a-zip'; readonly typed: string }
  | { readonly code: 'military' | 'not-listed'; readonly zip: string };

/** How a place was found; `words` says it. */
export type PlaceBasis =
  | { readonly code: 'zip'; readonly zip: string }
  /** The middle of the codes that begin alike, of the state, or of the country. */
  | { readonly code: 'prefix'; readonly prefix: string; readonly problem: ZipProblem }
  | { readonly code: 'state'; readonly stateName: string; readonly problem: ZipProblem }
  | { readonly code: 'country'; readonly problem: ZipProblem };

/** A point for the household, and how sure it is. */
export interface Where extends Point {
  foundBy: PlaceBasis['code'];
  state: string | null;
  basis: PlaceBasis;
}

/** About the middle of the contiguous states, by the Geological Survey. */
const MIDDLE_OF_COUNTRY: Point = { latDeg: 39.83, lonDeg: -98.58 };

/**
 * The point a ZIP code stands for. Never fails: an unlisted code takes the middle of the codes that
 * share its first three digits, then the middle of its state (or of `state`, if given), then the middle
 * of the country; `basis` says which, and why.
 */
export function whereZip(zip: string, state?: string): Where {
  const digits = readZip(zip);
  if (digits !== null) {
    const found = byZip(digits) ?? byPrefix(digits, { code: 'not-listed', zip: digits });
    if (found !== null) return found;
  }
  const prefix = readPrefix(zip);
  const shared = prefix === null ? null : byPrefix(prefix, { code: 'three-digits-only', prefix });
  if (shared !== null) return shared;
  const home = state?.trim().toUpperCase() ?? stateOfZip(zip);
  const middle = home === null ? null : middleOfZips((code) => stateOfCode(code) === home);
  const problem = problemOf(zip, digits);
  if (home !== null && middle !== null) {
    const basis: PlaceBasis = { code: 'state', stateName: stateName(home), problem };
    return { ...middle, foundBy: basis.code, state: home, basis };
  }
  return {
    ...MIDDLE_OF_COUNTRY,
    foundBy: 'country',
    state: null,
    basis: { code: 'country', problem },
  };
}

function byZip(digits: string): Where | null {
  const middle = zipMiddle(Number(digits));
  if (middle === null) return null;
  const basis: PlaceBasis = { code: 'zip', zip: digits };
  return { ...middle, foundBy: basis.code, state: stateOfZip(digits), basis };
}

function byPrefix(digits: string, problem: ZipProblem): Where | null {
  const prefix = digits.slice(0, 3);
  const state = stateOfZip(digits);
  if (state === null || state === 'MIL') return null;
  const middle = middleOfZips((code) => Math.floor(code / 100) === Number(prefix));
  if (middle === null) return null;
  const basis: PlaceBasis = { code: 'prefix', prefix, problem };
  return { ...middle, foundBy: basis.code, state, basis };
}

function problemOf(zip: string, digits: string | null): ZipProblem {
  if (digits === null) {
    const typed = zip.trim();
    return typed === '' ? { code: 'no-zip' } : { code: 'not-a-zip', typed };
  }
  return { code: stateOfZip(digits) === 'MIL' ? 'military' : 'not-listed', zip: digits };
}
