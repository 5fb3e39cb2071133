// `npm run soak -- [--part NAME] [--count N] [--from SEED] [--minutes N]`: every part up to its whole count, or one part,
// each from where its last run stopped.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { emptyTally, type Tally, tryPart } from './part';
import { parts } from './parts';

/** Where each part left off; take it away to begin again. */
const FOLDER = 'dist/soak';
const MINUTES = 120;
/** Between two writings of where we are, and two lines of progress, ms. */
const KEEP_EVERY_MS = 2000;
const SAY_EVERY_MS = 60_000;

interface Run extends Tally {
  nextSeed: number;
  done: number;
  seconds: number;
  /** Seed at which the last run stood while it ran; null once it ended as it should. */
  at: number | null;
}

function wish(name: string): string | null {
  const at = process.argv.indexOf(name);
  return at < 0 ? null : (process.argv[at + 1] ?? '');
}

function wishedNumber(name: string): number | null {
  const wished = wish(name);
  if (wished === null) return null;
  const value = Number(wished);
  if (Number.isFinite(value) && value > 0) return value;
  console.error(`${name} takes a number above 0`);
  process.exit(64);
}

function wishedParts(): string[] {
  const wished = wish('--part');
  if (wished === null) return Object.keys(parts);
  if (Object.hasOwn(parts, wished)) return [wished];
  console.error(`--part takes one of ${Object.keys(parts).join(', ')}`);
  process.exit(64);
}

const fileOf = (name: string) => `${FOLDER}/${name}.json`;

function lastRun(name: string, from: number | null): Run {
  const fresh: Run = { nextSeed: from ?? 1, done: 0, seconds: 0, at: null, ...emptyTally() };
  if (from !== null) return fresh;
  try {
    return JSON.parse(readFileSync(fileOf(name), 'utf8')) as Run;
  } catch {
    return fresh;
  }
}

const names = wishedParts();
const count = wishedNumber('--count');
const from = wishedNumber('--from');
const end = performance.now() + (wishedNumber('--minutes') ?? MINUTES) * 60_000;
let stopped = false;
for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => (stopped = true));
mkdirSync(FOLDER, { recursive: true });
let faults = 0;
for (const name of names) faults += await runPart(name);
process.exit(faults > 0 ? 1 : 0);

async function runPart(name: string): Promise<number> {
  const part = parts[name]!;
  const run = lastRun(name, from);
  if (run.at !== null) run.faults.push(`${part.of} ${run.at} or a few later: never came back`);
  const most = count === null ? part.whole - run.done : count;
  console.log(
    `${name}: from seed ${run.nextSeed}, ${Math.max(0, most)} to try, Node ${process.version}`,
  );
  const before = run.seconds;
  const start = performance.now();
  let kept = 0;
  let said = start;
  for (let n = 0; n < most && !stopped && performance.now() < end; n++) {
    const now = performance.now();
    if (now - kept > KEEP_EVERY_MS) {
      keep(name, { ...run, at: run.nextSeed });
      kept = now;
    }
    if (now - said > SAY_EVERY_MS) {
      say(name, run);
      said = now;
    }
    const known = run.faults.length;
    await tryPart(part, run.nextSeed, run);
    for (const fault of run.faults.slice(known)) console.log(fault);
    run.nextSeed++;
    run.done++;
    run.seconds = before + (performance.now() - start) / 1000;
    // Parts that never wait would hear no signal.
    if (now === kept) await new Promise((resolve) => setImmediate(resolve));
  }
  keep(name, { ...run, at: null });
  say(name, run);
  for (const [what, times] of Object.entries(run.spoke)) console.log(`  ${what}: ${times}`);
  return run.faults.length;
}

function keep(name: string, run: Run): void {
  writeFileSync(fileOf(name), `${JSON.stringify(run, null, 1)}\n`);
}

function say(name: string, { done, seconds, nextSeed, faults }: Run): void {
  const minutes = (seconds / 60).toFixed(1);
  console.log(
    `${name}: ${done} of ${parts[name]!.whole} in ${minutes} min, up to seed ${nextSeed - 1}: ${faults.length} faults`,
  );
}
