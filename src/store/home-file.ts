import { visibleLine } from '../quantity/visible';

/** First key of a home file, with the version of its form. */
export const HOME_KEY = 'lampkeeperHome';
export const HOME_VERSION = 1;
/** Key of what was typed or ticked and not entered. */
export const UNFINISHED_KEY = 'unfinished';
/** Key of a home file under which the household's own tariff stands in full, where it has one. */
export const TARIFF_BLOCK = 'tariff';
/** Something wrong in a home file: where, what, and what to do. Line and column count from 1. */
export interface Fault {
  readonly line: number;
  readonly column: number;
  readonly says: string;
}

/** "FILE:12:3: ..." as editors understand it, on one line. */
export function sayFault(file: string, { line, column, says }: Fault): string {
  const named = file === '-' ? 'standard input' : file;
  return visibleLine(`${named}:${line}:${column}: ${says}`);
}

/** Faults told at once. Who has more mends these first. */
const MOST_FAULTS = 20;

/** The first faults of a file, a line each, and how many more there are. */
export function sayFaults(file: string, faults: readonly Fault[]): string {
  const more = faults.length - MOST_FAULTS;
  const told = faults.slice(0, MOST_FAULTS).map((fault) => sayFault(file, fault));
  return [...told, ...(more > 0 ? [`and ${more.toLocaleString('en-US')} more.`] : [])].join('\n');
}

/** The file that holds the home of this name. */
export function homeFileName(name: string): string {
  return `${name}.home.yaml`;
}

/** The name in the name of a home file: "kim.home.yaml" and "kim.yaml" are both "kim". */
export function nameOfFile(path: string): string {
  const base = path.replace(/^.*[\\/]/, '');
  return base.replace(/(\.home)?\.ya?ml$/i, '');
}
