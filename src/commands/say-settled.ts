import { printErr, printOut } from './print';
import type { Arguments } from './read-arguments';
import type { Keeping, Settled } from './talk/keeping';

/** Say what is not on the disk, and print the home to copy. True when something is missing. */
export async function sayMissing(
  keeping: Pick<Keeping, 'leaveOld' | 'text'>,
  { file, missing, why }: Settled,
  args: Pick<Arguments, 'sharedScreen'>,
): Promise<boolean> {
  const stillThere = keeping.leaveOld();
  if (stillThere !== null) printErr(`${stillThere}\n`);
  if (missing.length === 0) return false;
  const { mayPrint } = await import('./talk/shared-screen');
  if (!(await mayPrint(args, '\nNOT ALL YOUR ANSWERS ARE ON THE DISK.'))) return true;
  printErr(
    `\nNOT ALL YOUR ANSWERS ARE ON THE DISK.\n${why ?? `${file} does not hold them.`}\nMissing there: ${missing.join('; ')}.\nHere is the whole home. Copy it into a file whose name ends in .home.yaml:\n\n`,
  );
  printOut(keeping.text());
  return true;
}
