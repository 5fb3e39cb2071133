import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { compileHeldFigures } from './compile-held-figures';
import { compileQuestions } from './compile-questions';
import { compileShares } from './compile-shares';
import { compileTables } from './compile-tables';
import { compileWords } from './compile-words';
import { compileZips } from './compile-zips';

/** Turn the data files into modules under `dist/compiled`, before the program is bundled. */
export function compile(root: string): void {
  refuseOtherLanguages(join(root, 'questions'));
  compileTables(join(root, 'src/tables/data'), join(root, 'dist/compiled/tables'));
  compileWords(
    join(root, 'src/words'),
    join(root, 'src/tables/data/rules.yaml'),
    join(root, 'dist/compiled/words'),
  );
  compileHeldFigures(join(root, 'src/tables/data/place'), join(root, 'dist/compiled'));
  compileZips(join(root, 'src/tables/data/place'), join(root, 'dist/compiled'));
  const questions = compileQuestions(join(root, 'questions/en'), join(root, 'dist/compiled'));
  compileShares(join(root, 'questions/shares.yaml'), questions, join(root, 'dist/compiled'));
}

/** A folder beside `en` would be read by nobody, and its work lost without a word. */
function refuseOtherLanguages(questions: string): void {
  const others = readdirSync(questions, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && entry.name !== 'en')
    .map((entry) => entry.name);
  if (others.length > 0) {
    throw new Error(
      `questions/${others.join(', ')}: only questions/en is read so far; "Add a language" in DEVELOPERS.md says what has to come first`,
    );
  }
}
