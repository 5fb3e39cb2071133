/**
 * Rows of a plain CSV file with a header line: no quoted commas, numbers become numbers,
 * an empty cell becomes null. Throws with the line number when a row has the wrong width.
 */
export function readCsv(text: string, file: string): Record<string, string | number | null>[] {
  const lines = text.split(/\r?\n/).filter((line) => line !== '');
  const head = lines[0]?.split(',') ?? [];
  return lines.slice(1).map((line, i) => {
    const cells = line.split(',');
    if (cells.length !== head.length) {
      throw new Error(`${file}:${i + 2}: ${cells.length} cells, the header has ${head.length}`);
    }
    return Object.fromEntries(head.map((name, c) => [name, cell(cells[c]!)]));
  });
}

function cell(text: string): string | number | null {
  if (text === '') return null;
  const number = Number(text);
  return Number.isFinite(number) ? number : text;
}
