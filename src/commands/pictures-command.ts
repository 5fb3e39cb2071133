import interview from '#compiled/questions.js';
import { glyphsFor } from '../faces/screen/glyphs';
import { picturesOf } from '../papers/pictures/of-plan/pictures-of';
import type { Picture } from '../papers/pictures/picture';
import { makePlan } from '../plan/make-plan';
import { visible } from '../quantity/visible';
import { nameOfFile } from '../store/home-file';
import { wordsIn } from '../words/words-in';
import { DONE, FAILED, WRONG_USAGE } from './exit-codes';
import { homeFromFile } from './home-from-file';
import { printErr, printOut } from './print';
import { PLANNING, withProgress } from './progress';
import type { Arguments } from './read-arguments';

/** Columns where the output is no terminal, and the least and the most a picture is drawn in. */
const COLUMNS = { usual: 80, least: 40, most: 100 };

/** `lampkeeper pictures HOME`: the pictures of a plan in letters and blocks; as tables with --plain. */
export async function picturesCommand(args: Arguments): Promise<number> {
  const [path, ...more] = args.rest;
  if (path === undefined || more.length > 0) {
    printErr('pictures takes one home: lampkeeper pictures kim\n');
    return WRONG_USAGE;
  }
  const home = await homeFromFile(path, args.asOf);
  if (!home.ok) {
    printErr(`${home.says}\n`);
    return FAILED;
  }
  const words = await wordsIn('en');
  const answers = { ...home.answers, 'home-name': nameOfFile(path) };
  const plan = await withProgress(PLANNING, () =>
    makePlan(interview, answers, home.asOf, undefined, home.tariff),
  );
  if (plan.undecided.length > 0) {
    printErr(`${words.sheets.pictures.tooEarly}\n`);
    return FAILED;
  }
  const all = [...picturesOf(plan, words).values()].map((picture) =>
    args.plain ? asTable(picture) : inTerminal(picture),
  );
  printOut(`${visible(all.join('\n\n'))}\n`);
  return DONE;
}

function inTerminal({ inTerminal: draw }: Picture): string {
  const columns = process.stdout.columns ?? COLUMNS.usual;
  const width = Math.min(COLUMNS.most, Math.max(COLUMNS.least, columns));
  return draw(width, glyphsFor(process.env).modern ? 'blocks' : 'ascii').join('\n');
}

/** A line a row, each figure after what it is: to be read aloud. */
function asTable({ drawing, table: { head, rows } }: Picture): string {
  const lines = rows.map(([name = '', ...cells]) => {
    const said = cells.flatMap((cell, i) => (cell === '' ? [] : [`${head[i + 1]} ${cell}`]));
    return `- ${[name, ...said].join('; ')}`;
  });
  return [drawing.title, drawing.description, ...lines].join('\n');
}
