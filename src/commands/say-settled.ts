import type { Keeping, Settled } from './keeping';
import { printErr, printOut } from './print';

/** Say what is not on the disk, and print the home to copy. True when something is missing. */
export function sayMissing(keeping: Keeping, { file, missing, why }: Settled): boolean {
  const stillThere = keeping.leaveOld();
  if (stillThere !== null) printErr(`${stillThere}\n`);
  if (missing.length === 0) return false;
  printErr(
    `\nNOT ALL YOUR ANSWERS ARE ON THE DISK.\n${why ?? `${file} does not hold them.`}\nMissing there: ${missing.join('; ')}.\nHere is the whole home. Copy it into a file whose name ends in .home.yaml:\n\n`,
  );
  printOut(keeping.text());
  return true;
}
