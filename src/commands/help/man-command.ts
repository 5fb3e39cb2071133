import { DONE } from '../exit-codes';
import { printOut } from '../print';
import { manPage } from './man-page';

/** `lampkeeper man`: the manual page. */
export function manCommand(): number {
  printOut(manPage());
  return DONE;
}
