import wrapAnsi from 'wrap-ansi';

/** A line broken at spaces, none wider than `columns`, later lines further in. */
export function wrapped(text: string, indent: string, columns: number, further = 4): string[] {
  const later = indent + ' '.repeat(further);
  const width = Math.max(20, columns - later.length);
  return wrapAnsi(text, width, { hard: true, trim: true })
    .split('\n')
    .map((line, i) => `${i === 0 ? indent : later}${line}`);
}
