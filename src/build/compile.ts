import { join } from 'node:path';
import { compileHeldFigures } from './compile-held-figures';
import { compileQuestions } from './compile-questions';
import { compileTables } from './compile-tables';
import { compileZips } from './compile-zips';

/** Turn the data files into modules under `dist/compiled`, before the program is bundled. */
export function compile(root: string): void {
  compileTables(join(root, 'src/tables/data'), join(root, 'dist/compiled/tables'));
  compileHeldFigures(join(root, 'src/tables/data'), join(root, 'dist/compiled'));
  compileZips(join(root, 'src/tables/data'), join(root, 'dist/compiled'));
  compileQuestions(join(root, 'questions/en'), join(root, 'dist/compiled'));
}
