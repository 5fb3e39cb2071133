import { rmSync } from 'node:fs';
import { dirname } from 'node:path';
import { afterAll, beforeAll } from 'vitest';
import { bundleSmall } from './bundle-small';
import { terminalsOf } from './terminals-of';

/** Terminals with the small interview in them, bundled once a file and taken away after. */
export function smallTerminals() {
  let program = '';
  beforeAll(async () => {
    program = await bundleSmall('small-program.ts');
  });
  afterAll(() => rmSync(dirname(program), { recursive: true, force: true }));
  return terminalsOf(() => program, 'Is anything wrong');
}
