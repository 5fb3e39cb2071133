import { visible } from '../../quantity/visible';
import { wrapText } from '../screen/line';

/** Print lines; in a terminal they are broken at spaces, so that its edge breaks no word. */
export function printLines(stdout: NodeJS.WriteStream, lines: readonly string[]): void {
  if (lines.length === 0) return;
  const width = stdout.isTTY === true ? stdout.columns : undefined;
  const broken = width === undefined ? lines : lines.flatMap((line) => wrapText(line, width));
  stdout.write(`${visible(broken.join('\n'))}\n`);
}
