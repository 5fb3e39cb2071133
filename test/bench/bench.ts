import { benchDispatch } from './bench-dispatch';
import { benchOutage } from './bench-outage';
import { benchProgram } from './bench-program';
import { benchQuestions } from './questions';
import { benchWhatIf } from './what-if';

/** Parts of the benchmark by name; with no name given, all of them. */
const parts: Record<string, () => Promise<readonly string[]> | readonly string[]> = {
  program: benchProgram,
  outage: () => benchOutage(),
  dispatch: benchDispatch,
  questions: benchQuestions,
  'what-if': benchWhatIf,
};

const wished = process.argv.slice(2);
for (const [name, run] of Object.entries(parts)) {
  if (wished.length > 0 && !wished.includes(name)) continue;
  console.log(`== ${name}`);
  for (const line of await run()) console.log(line);
}
process.exit(0);
