/** Text folded at spaces into lines of at most `width` characters; a word longer than that is cut. */
export function folded(said: string, width: number): string[] {
  const lines: string[] = [];
  let now = '';
  for (const word of said.split(/\s+/).flatMap((one) => pieces(one, width))) {
    if (now === '') now = word;
    else if (now.length + 1 + word.length <= width) now += ` ${word}`;
    else {
      lines.push(now);
      now = word;
    }
  }
  return [...lines, now];
}

function pieces(word: string, width: number): string[] {
  const letters = [...word];
  return Array.from({ length: Math.ceil(letters.length / width) }, (_, i) =>
    letters.slice(i * width, (i + 1) * width).join(''),
  );
}
