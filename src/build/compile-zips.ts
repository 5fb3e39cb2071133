import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Write the ZIP codes of `zip-middles.csv`, in rising order, and their middles as one small module: gaps between codes, latitudes and
 * longitudes in hundredths of a degree (about 1 km), each as 16-bit little-endian base64.
 */
export function compileZips(from: string, to: string): void {
  const [, ...lines] = readFileSync(join(from, 'zip-middles.csv'), 'utf8').trimEnd().split('\n');
  const rows = lines.map((line) => line.split(',').map(Number) as [number, number, number]);
  const codes = rows.map(([zip]) => zip);
  const columns = {
    gaps: packed(codes.map((code, i) => code - (codes[i - 1] ?? 0))),
    latHundredths: packed(rows.map(([, lat]) => Math.round(lat * 100))),
    lonHundredths: packed(rows.map(([, , lon]) => Math.round(lon * 100))),
  };
  mkdirSync(to, { recursive: true });
  writeFileSync(join(to, 'zips.js'), `export default ${JSON.stringify(columns)};\n`);
  writeFileSync(
    join(to, 'zips.d.ts'),
    'declare const zips: { gaps: string; latHundredths: string; lonHundredths: string };\nexport default zips;\n',
  );
}

function packed(values: number[]): string {
  const bytes = Buffer.alloc(values.length * 2);
  for (const [i, value] of values.entries()) bytes.writeInt16LE(value, i * 2);
  return bytes.toString('base64');
}
