// Types `npm start` into a real terminal, answers the opening with "not sure", writes the first plan, and looks for the papers.
import { existsSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import pty from '@lydell/node-pty';
import xterm from '@xterm/headless';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const papers = ['home.yaml', 'plan.yaml', 'plan.md', 'plan.html'].map((kind) =>
  join(root, `drive-start.${kind}`),
);
for (const paper of papers) rmSync(paper, { force: true });

const { CI: _, ...env } = process.env;
const screen = new xterm.Terminal({ cols: 80, rows: 24, allowProposedApi: true });
const program = pty.spawn('npm', ['start'], {
  cwd: root,
  cols: 80,
  rows: 24,
  env: { ...env, TERM: 'xterm-256color' },
});
let exit = null;
program.onData((data) => screen.write(data));
program.onExit(({ exitCode }) => {
  exit = exitCode;
});

/** What stands on the screen now. */
function shown() {
  const { active } = screen.buffer;
  const lines = Array.from(
    { length: screen.rows },
    (_, y) => active.getLine(active.baseY + y)?.translateToString(true) ?? '',
  );
  return lines.join('\n');
}

/** Wait for a change of the screen or the end of the program. */
async function until(holds, what, ms = 120_000) {
  const end = Date.now() + ms;
  while (!holds()) {
    if (Date.now() > end)
      throw new Error(`waited in vain for ${what}; the screen shows:\n${shown()}`);
    await new Promise((next) => setTimeout(next, 15));
  }
}

await until(() => /Enter begin/.test(shown()), 'the welcome');
program.write('\r');
await until(() => /dangerous.*right now/i.test(shown().replace(/\s+/g, ' ')), 'the first question');
program.write('9 \r');
await until(() => /What short name/.test(shown()), 'the name question');
program.write('drive-start\r');
let before = '';
const FIRST_PLAN = /Write this first plan as a draft/;
while (!FIRST_PLAN.test(shown())) {
  await until(
    () => FIRST_PLAN.test(shown()) || (shown() !== before && /Tab not sure/.test(shown())),
    'the next question',
  );
  if (FIRST_PLAN.test(shown())) break;
  before = shown();
  program.write('\t');
}
// No line is marked before somebody moves; the second one writes the plan.
program.write('\u001b[B\u001b[B');
await until(() => /> Write this first plan/.test(shown()), 'the line that writes the plan');
program.write('\r');
await until(() => /Backup power plan/.test(shown()), 'the plan on the screen');
// Esc asks before it leaves.
program.write('\u001b');
await until(() => /Y leave/.test(shown()), 'the question whether to leave');
program.write('y');
await until(() => exit !== null, 'the end');
const missing = papers.filter((paper) => !existsSync(paper));
for (const paper of papers) rmSync(paper, { force: true });
if (exit !== 0 || missing.length > 0) {
  console.error(`exit ${exit}; missing: ${missing.join(', ') || 'nothing'}`);
  process.exit(1);
}
console.log('npm start led from the welcome through the opening to the papers of a first plan.');
process.exit(0);
