import { beforeAll } from 'vitest';
import { bundleSmall } from './bundle-small';
import { sittingsIn } from './sittings-in';
import { terminalsOf } from './terminals-of';

/**
 * Terminals with a small program in them, bundled once: `start` one of its own, or `sit` down at one that runs as long
 * as the file.
 */
export function smallTerminals(name = 'small-program.ts', first = 'Is anything wrong') {
  let program = '';
  beforeAll(async () => {
    program = await bundleSmall(name);
  });
  return {
    start: terminalsOf(() => program, first),
    sit: sittingsIn(() => program, first),
  };
}
