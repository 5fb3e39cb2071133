import { benchDispatch } from './bench-dispatch';
import { benchOutage } from './bench-outage';
import { benchProgram } from './bench-program';
import { benchLiveAdvice, type Measured } from './live-advice';
import { benchQuestions } from './questions';
import { benchReadAhead } from './read-ahead';
import { benchWhatIf } from './what-if';

type Part = () => Promise<readonly string[]> | readonly string[] | Measured;

/** Parts of the benchmark by name; with no name given, all of them. One that is over its limit fails the run. */
const parts: Record<string, Part> = {
  program: benchProgram,
  outage: () => benchOutage(),
  dispatch: benchDispatch,
  'live-advice': benchLiveAdvice,
  questions: benchQuestions,
  'read-ahead': benchReadAhead,
  'what-if': benchWhatIf,
};

const wished = process.argv.slice(2);
let over = false;
for (const [name, run] of Object.entries(parts)) {
  if (wished.length > 0 && !wished.includes(name)) continue;
  console.log(`== ${name}`);
  const found = await run();
  for (const line of 'lines' in found ? found.lines : found) console.log(line);
  over ||= 'over' in found && found.over;
}
process.exit(over ? 1 : 0);
