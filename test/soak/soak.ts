// `npm run soak -- [--minutes N] [--from SEED]`: random homes, their twins and interviews, from where the last run stopped.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { type Tally, tryHome, tryInterview } from './home-faults';

/** Where a run left off; take it away to begin again. */
const FILE = 'dist/soak.json';
const MINUTES = 120;
/** Homes between two lines of progress. */
const EVERY = 100;

interface Run extends Tally {
  nextSeed: number;
  homes: number;
  seconds: number;
}

const wished = (name: string): number | null => {
  const at = process.argv.indexOf(name);
  if (at < 0) return null;
  const value = Number(process.argv[at + 1]);
  if (Number.isFinite(value) && value > 0) return value;
  console.error(`${name} takes a number above 0`);
  process.exit(64);
};

function lastRun(from: number | null): Run {
  const fresh: Run = { nextSeed: from ?? 1, homes: 0, seconds: 0, faults: [], spoke: {} };
  if (from !== null) return fresh;
  try {
    return JSON.parse(readFileSync(FILE, 'utf8')) as Run;
  } catch {
    return fresh;
  }
}

const minutes = wished('--minutes') ?? MINUTES;
const run = lastRun(wished('--from'));
mkdirSync('dist', { recursive: true });
const start = performance.now();
const before = run.seconds;
console.log(`From seed ${run.nextSeed}, for ${minutes} min on Node ${process.version}`);
while (performance.now() - start < minutes * 60_000) {
  const known = run.faults.length;
  tryHome(run.nextSeed % 2 === 0 ? 'complete' : 'any', run.nextSeed, run);
  tryInterview(run.nextSeed, run);
  for (const fault of run.faults.slice(known)) console.log(fault);
  run.nextSeed++;
  run.homes++;
  run.seconds = before + (performance.now() - start) / 1000;
  writeFileSync(FILE, `${JSON.stringify(run, null, 1)}\n`);
  if (run.homes % EVERY === 0) progress();
}
progress();
for (const [what, plans] of Object.entries(run.spoke)) console.log(`  ${what}: ${plans} plans`);
process.exitCode = run.faults.length > 0 ? 1 : 0;

function progress(): void {
  const spent = (run.seconds / 60).toFixed(1);
  console.log(
    `${run.homes} homes in ${spent} min, up to seed ${run.nextSeed - 1}: ${run.faults.length} faults`,
  );
}
