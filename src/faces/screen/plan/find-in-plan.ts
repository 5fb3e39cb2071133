import { graphemes } from '../../../interview/keys/text-field';
import { asPattern } from '../../../quantity/as-pattern';

/** Where a text sought stands: from a line and letter on, up to a line and letter. */
export interface Hit {
  readonly line: number;
  readonly from: number;
  readonly lastLine: number;
  readonly to: number;
}

const COLOR = /\x1b\[[0-9;]*m/g;

/** Every place of a text in the lines, small and capital letters alike; a blank stands for a line break too. */
export function findIn(lines: readonly string[], sought: string): Hit[] {
  const words = sought.trim().split(/\s+/).map(asPattern);
  if (words.join('') === '') return [];
  const bare = lines.map((line) => line.replace(COLOR, ''));
  const starts: number[] = [];
  let length = 0;
  for (const line of bare) {
    starts.push(length);
    length += line.length + 1;
  }
  const lineAt = (at: number) => starts.findLastIndex((start) => start <= at);
  return [...bare.join('\n').matchAll(new RegExp(words.join('\\s+'), 'giu'))].map((match) => {
    const [first, last] = [match.index, match.index + match[0].length];
    const [line, lastLine] = [lineAt(first), lineAt(last - 1)];
    return { line, from: first - starts[line]!, lastLine, to: last - starts[lastLine]! };
  });
}

const [MARK, UNMARK] = ['\x1b[7m', '\x1b[27m'];

/** A line with what was found in it marked. Its colors stay. */
export function withHit(line: string, at: number, hit: Hit | null): string {
  if (hit === null || at < hit.line || at > hit.lastLine) return line;
  const from = at === hit.line ? hit.from : 0;
  const to = at === hit.lastLine ? hit.to : Number.POSITIVE_INFINITY;
  let [out, seen] = ['', 0];
  for (const [i, piece] of line.split(/(\x1b\[[0-9;]*m)/).entries()) {
    if (i % 2 === 1) {
      out += piece;
      continue;
    }
    for (const letter of graphemes(piece)) {
      const here = seen >= from && seen < to;
      out += here ? `${MARK}${letter}${UNMARK}` : letter;
      seen += letter.length;
    }
  }
  return out;
}
