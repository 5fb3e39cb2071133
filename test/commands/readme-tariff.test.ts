import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { readTariffFile } from '../../src/bill/tariff/read-tariff';

test('the tariff in the README is whole', () => {
  const readme = readFileSync(join(import.meta.dirname, '../../README.md'), 'utf8');
  const [, block] = /```yaml\n(lampkeeperTariff[\s\S]*?)```/.exec(readme)!;
  expect(readTariffFile(parse(block!)).faults).toEqual([]);
});
