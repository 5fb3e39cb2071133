import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pty from '@lydell/node-pty';
import interview from '#compiled/questions.js';
import { WELCOME_TITLE } from '../../src/faces/welcome-words';

const RUNS = 15;
const KEYS = 60;
const bin = 'src/bin/lampkeeper.mjs';

/** The program as a person waits for it: first question, key to frame, a whole plan; each against `node -e 0`. */
export async function benchProgram(): Promise<string[]> {
  const folder = mkdtempSync(join(tmpdir(), 'lampkeeper-bench-'));
  try {
    const base: number[] = [];
    const first: number[] = [];
    const welcome: number[] = [];
    const begun = join(folder, 'begun');
    mkdirSync(begun);
    writeFileSync(join(begun, 'oak.home.yaml'), 'lampkeeperHome: 1\nanswers:\n  home-name: oak\n');
    for (let i = 0; i < RUNS; i++) {
      base.push(timed(() => spawnSync(process.execPath, ['-e', '0'])));
      welcome.push(await firstScreenMs(folder, [], WELCOME_TITLE));
      first.push(await firstScreenMs(begun, ['oak.home.yaml'], FIRST));
    }
    const plans = ['birch-street', 'tower-six', 'ridge-road', 'mill-lane'].map((name) => ({
      name,
      ms: median(Array.from({ length: 5 }, () => planMs(name))),
      mb: planMb(name),
    }));
    const keys = await keyToFrameMs(folder);
    const zero = median(base);
    return [
      `node -e 0: ${zero.toFixed(1)} ms (median of ${RUNS})`,
      line('welcome on screen', median(welcome), zero, 4),
      line('first question on screen, of a home begun before', median(first), zero, 4),
      ...plans.map(
        (p) => `${line(`plan of ${p.name}`, p.ms, zero, 25)}; ${p.mb.toFixed(0)} MB (limit 300)`,
      ),
      `key to redrawn frame: 95th percentile ${quantile(keys, 0.95).toFixed(1)} ms, median ${median(keys).toFixed(1)} ms over ${keys.length} keys 150 ms apart (limit 50 ms)`,
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function line(what: string, ms: number, zero: number, limit: number): string {
  const times = ms / zero;
  return `${what}: ${ms.toFixed(1)} ms, ${times.toFixed(2)} times node -e 0 (limit ${limit}${times > limit ? ', OVER' : ''})`;
}

function planMs(name: string): number {
  return timed(() => {
    const run = spawnSync(process.execPath, [bin, 'plan', `test/households/${name}.home.yaml`]);
    if (run.status !== 0) throw new Error(`plan of ${name} failed: ${run.stderr}`);
  });
}

/** Largest resident size of a plan run, MB, as the process itself reports it at its end. */
function planMb(name: string): number {
  const say =
    "process.on('exit', () => process.stderr.write('RSS ' + process.resourceUsage().maxRSS))";
  const run = spawnSync(process.execPath, [
    '--import',
    `data:text/javascript,${say}`,
    bin,
    'plan',
    `test/households/${name}.home.yaml`,
  ]);
  return Number(/RSS (\d+)/.exec(String(run.stderr))?.[1] ?? Number.NaN) / 1024;
}

function open(folder: string, args: string[] = []) {
  const { CI: _, ...env } = process.env;
  return pty.spawn(process.execPath, [join(process.cwd(), bin), ...args], {
    cwd: folder,
    cols: 80,
    rows: 24,
    env: { ...env, TERM: 'xterm-256color' },
  });
}

const FIRST = interview.questions[0]!.ask.split(' ').slice(0, 4).join(' ');

function firstScreenMs(folder: string, args: string[], words: string): Promise<number> {
  return new Promise((resolve) => {
    const start = performance.now();
    const program = open(folder, args);
    let seen = '';
    let shown: number | null = null;
    program.onData((data) => {
      seen += data;
      if (!seen.includes(words) || shown !== null) return;
      shown = performance.now() - start;
      program.kill();
    });
    program.onExit(() => resolve(shown ?? Number.NaN));
  });
}

/** Type letters into the name field, 150 ms apart, and time until each is drawn. */
async function keyToFrameMs(folder: string): Promise<number[]> {
  const program = open(folder);
  let seen = '';
  let wake = () => {};
  program.onData((data) => {
    seen += data;
    wake();
  });
  const until = (holds: () => boolean) =>
    new Promise<void>((resolve) => {
      wake = () => {
        if (holds()) resolve();
      };
      wake();
    });
  await until(() => seen.includes(WELCOME_TITLE));
  program.write('\r');
  await until(() => seen.includes(FIRST));
  program.write('9 \r');
  await until(() => seen.includes(interview.questions[1]!.ask.slice(0, 20)));
  const times: number[] = [];
  let typed = '';
  for (let i = 0; i < KEYS; i++) {
    await new Promise((next) => setTimeout(next, 150));
    const letter = 'abcdefghijklmnopqrstuvwxyz'[i % 26]!;
    if (i % 20 === 0 && i > 0) {
      program.write('\u0015');
      await new Promise((next) => setTimeout(next, 150));
      typed = '';
    }
    typed += letter;
    seen = '';
    const start = performance.now();
    program.write(letter);
    await until(() => seen.includes(typed));
    times.push(performance.now() - start);
  }
  // It keeps what was typed to the last: its folder is not to be taken away before it has ended.
  const ended = new Promise<void>((resolve) => {
    program.onExit(() => resolve());
  });
  program.kill();
  await ended;
  return times;
}

function timed(run: () => void): number {
  const start = performance.now();
  run();
  return performance.now() - start;
}

function median(values: readonly number[]): number {
  return quantile(values, 0.5);
}

function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)]!;
}
