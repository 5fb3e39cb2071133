import { visible } from '../quantity/visible';

/** Words or data for the person or program that reads us. Nothing that a file may have put in is obeyed by a terminal. */
export function printOut(text: string): void {
  process.stdout.write(visible(text));
}

/** What went wrong, or what else there is to know. */
export function printErr(text: string): void {
  process.stderr.write(visible(text));
}
