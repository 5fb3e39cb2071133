import { DONE } from './exit-codes';
import { manPage } from './man-page';
import { printOut } from './print';

/** `lampkeeper man`: the manual page. */
export function manCommand(): number {
  printOut(manPage());
  return DONE;
}
