/** A table with a line of heads; a cell holds nothing that would end it. */
export function table(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  return [line(heads), `|${heads.map(() => '---|').join('')}`, ...rows.map(line)].join('\n');
}
