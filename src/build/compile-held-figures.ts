import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { ClimateRow } from '../tables/place/climate-row';
import { heldFigures } from './held-figures';
import { readCsv } from './read-csv';

const FILES = ['climate-stations.csv', 'climate-diffuse.csv', 'climate-spread.csv'];

/** Write what odd months of stations are drawn in to, by station and column, as one small module. */
export function compileHeldFigures(from: string, to: string): void {
  mkdirSync(to, { recursive: true });
  const held = heldFigures(stationRows(from));
  // Of a few stations only is it ever read: each is a text of its own.
  const text = JSON.stringify(
    Object.fromEntries([...held].map(([id, figures]) => [id, JSON.stringify(figures)])),
  );
  writeFileSync(
    join(to, 'climate-held.js'),
    `export default JSON.parse(${JSON.stringify(text)});\n`,
  );
  writeFileSync(
    join(to, 'climate-held.d.ts'),
    '/** Figures by column, as JSON, by station. */\ndeclare const held: Record<string, string>;\nexport default held;\n',
  );
}

/** The three climate tables in the folder `from`, joined by station. */
export function stationRows(from: string): ClimateRow[] {
  const [first, ...others] = FILES.map((file) =>
    readCsv(readFileSync(join(from, file), 'utf8'), file),
  );
  const byId = others.map((rows) => new Map(rows.map((row) => [row.id, row])));
  return first!.map((row) => Object.assign({}, row, ...byId.map((rows) => rows.get(row.id))));
}
