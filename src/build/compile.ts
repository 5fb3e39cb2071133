import { join } from 'node:path';
import { compileQuestions } from './compile-questions';
import { compileTables } from './compile-tables';
import { compileZips } from './compile-zips';

/** Turn the data files into modules under `dist/compiled`, before the program is bundled. */
export function compile(root: string): void {
  compileTables(join(root, 'src/tables/data'), join(root, 'dist/compiled/tables'));
  compileZips(join(root, 'src/tables/data'), join(root, 'dist/compiled'));
  compileQuestions(join(root, 'questions/en'), join(root, 'dist/compiled'));
}
