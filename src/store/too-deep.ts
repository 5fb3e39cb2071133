/** Lists within lists that a file may have. Ours need four; a reader of YAML falls over its own feet at a few hundred. */
export const MOST_DEPTH = 40;
const MOST_INDENT = 200;

/** Where a text nests deeper than any file of ours, counted from its start; null where it does not. One pass. */
export function tooDeep(text: string): number | null {
  let open = 0;
  let atStart = true;
  let marks = 0;
  let indent = 0;
  for (let i = 0; i < text.length; i++) {
    const letter = text[i]!;
    if (letter === '\n' || letter === '\r') {
      [atStart, marks, indent] = [true, 0, 0];
      continue;
    }
    if (letter === '[' || letter === '{') open += 1;
    else if ((letter === ']' || letter === '}') && open > 0) open -= 1;
    if (atStart && letter === ' ') indent += 1;
    else if (atStart && '-?:\t'.includes(letter)) marks += 1;
    else atStart = false;
    if (open > MOST_DEPTH || marks > MOST_DEPTH || (atStart && indent > MOST_INDENT)) return i;
  }
  return null;
}
