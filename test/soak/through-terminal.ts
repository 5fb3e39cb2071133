import { execFileSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { resolve } from 'node:path';
import { seeded } from '../fixtures/random-problem';
import { openTerminal } from '../pty/open-terminal';
import { met, note, type Tally } from './part';
import { randomBytes } from './random-bytes';

export const PROGRAM = resolve('src/bin/lampkeeper.mjs');

/** The same bytes into the real program; the modes of its terminal are read before and after. */
export async function tryThroughTerminal(seed: number, tally: Tally): Promise<void> {
  const random = seeded(seed ^ 0x6b65);
  // The shell outlives the program, and keys that come after its end, so that the terminal can be asked afterwards.
  const script = `trap : INT QUIT TSTP; stty -a > before; '${process.execPath}' '${PROGRAM}'; echo $? > code; stty -a > after`;
  const terminal = openTerminal(
    ['-c', script],
    { columns: 80, rows: 24 },
    { file: 'sh', env: { PS1: '' } },
  );
  try {
    await terminal.shows('Lampkeeper');
    for (let chunk = 0; chunk < 12; chunk++) {
      terminal.press(randomBytes(random, { suspend: true }).toString('latin1'));
      await new Promise((done) => setTimeout(done, 30));
    }
    await new Promise((done) => setTimeout(done, 300));
    terminal.press('\x1b[201~');
    await new Promise((done) => setTimeout(done, 100));
    terminal.press('\x03');
    // Ctrl+Z that came while the terminal was given back stops whoever has it, as it should; nobody else says `fg` here.
    const goOn = setInterval(() => continueAll(terminal.pid), 100);
    await terminal.ended().finally(() => clearInterval(goOn));
    const read = (name: string) =>
      execFileSync('cat', [`${terminal.folder}/${name}`], { encoding: 'utf8' });
    const code = Number(read('code'));
    met(tally, `the real program left with ${code}`);
    note(tally, `stream ${seed}`, 'the real terminal as it was found', [
      ...(read('before') === read('after') ? [] : ['its modes differ']),
      // 131: Ctrl+\ (QUIT) came before the program took the keys; it ends as that signal says, the terminal given back.
      ...([0, 1, 130, 131].includes(code) ? [] : [`code ${code}`]),
    ]);
  } finally {
    terminal.kill('SIGKILL');
    rmSync(terminal.folder, { recursive: true, force: true });
  }
}

/** Whoever was stopped in the terminal's own group goes on. */
function continueAll(pid: number): void {
  try {
    process.kill(-pid, 'SIGCONT');
  } catch {
    // All have ended.
  }
}
