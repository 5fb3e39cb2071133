import { visible } from '../quantity/visible';
import { brokenAtSpaces } from './broken-at-spaces';

/** Words or data for the person or program that reads us. Nothing that a file may have put in is obeyed by a terminal. */
export function printOut(text: string): void {
  process.stdout.write(visible(text));
}

/** What went wrong, or what else there is to know. The edge of a terminal breaks no word of it. */
export function printErr(text: string): void {
  const { isTTY, columns } = process.stderr;
  process.stderr.write(visible(isTTY === true ? brokenAtSpaces(text, columns) : text));
}
