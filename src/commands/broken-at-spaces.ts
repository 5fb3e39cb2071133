/** Lines longer than a window broken at spaces; what begins a line stays where it is, and a word is never broken. */
export function brokenAtSpaces(text: string, columns: number): string {
  return text
    .split('\n')
    .flatMap((line) => (line.length <= columns ? [line] : broken(line, columns)))
    .join('\n');
}

function broken(line: string, columns: number): string[] {
  const indent = /^\s*/.exec(line)![0];
  const lines: string[] = [];
  let now = indent;
  for (const word of line.trim().split(/\s+/)) {
    const empty = now === indent;
    if (!empty && now.length + 1 + word.length > columns) {
      lines.push(now);
      now = indent + word;
    } else now += empty ? word : ` ${word}`;
  }
  return [...lines, now];
}
