import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { compileTables } from './compile-tables';

/** Turn the data files into modules under `dist/compiled`, before the program is bundled. */
export function compile(root: string): void {
  compileTables(join(root, 'src/tables/data'), join(root, 'dist/compiled/tables'));
  if (!existsSync(join(root, 'questions/en'))) throw new Error('questions/en is missing');
}
