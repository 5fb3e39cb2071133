import { takeWidth, widthOf } from './line';
import { LEAST, type Size } from './watch-size';

/** Longest first. */
const SAID = [
  `This window is too small to show a question. Make it ${LEAST.columns} wide and ${LEAST.rows} high; nothing is lost.`,
  `Too small: ${LEAST.columns} wide, ${LEAST.rows} high; nothing is lost.`,
  `Too small: make it ${LEAST.columns} x ${LEAST.rows}.`,
  'Make it larger.',
  'Too small',
  'Small',
];

/** True when a question and its answers do not fit. */
export function isSmall({ columns, rows }: Size): boolean {
  return columns < LEAST.columns || rows < LEAST.rows;
}

/** One line, never wider than the window, that says to make it larger. */
export function smallLine({ columns }: Size): string {
  const fits = SAID.find((says) => widthOf(says) <= columns);
  return fits ?? takeWidth(SAID.at(-1)!, columns);
}
