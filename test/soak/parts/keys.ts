import { EventEmitter } from 'node:events';
import interview from '#compiled/questions.js';
import { showDraft } from '../../../src/commands/talk/show-draft';
import { runScreen } from '../../../src/faces/screen/run-screen';
import type { Answers } from '../../../src/interview/answers';
import { begin, welcome } from '../../../src/interview/begin';
import type { Context } from '../../../src/interview/state';
import { draftMaker } from '../../../src/plan/draft/draft-of';
import { seeded } from '../../fixtures/random-problem';
import { BROKEN } from '../never/papers';
import { met, note, type Part, type Tally } from '../part';
import { demoHome, type Homes, poolHome } from '../pool-home';
import { randomBytes } from '../random-bytes';
import { tryThroughTerminal } from '../through-terminal';

/** Of so many streams one goes through a pseudo-terminal into the real program. */
const REAL = 100;

const context: Context = {
  interview,
  short: false,
  nameProblem: () => null,
  spareName: () => 'home-1',
};
const draftOf = draftMaker(interview);

/** Bytes by chance at the keyboard: no crash, and the terminal as it was found. */
export const keys: Part = {
  whole: 5000,
  of: 'stream',
  try: (seed, tally) =>
    seed % REAL === 0 ? tryThroughTerminal(seed, tally) : tryStream(seed, tally, poolHome),
  light: (seed, tally) =>
    seed % REAL === 0 ? tryThroughTerminal(seed, tally) : tryStream(seed, tally, demoHome),
};

async function tryStream(seed: number, tally: Tally, knowsItself: Homes): Promise<void> {
  const random = seeded(seed ^ 0x6b65);
  const terminal = new FakeTerminal(random);
  const answers = random() < 0.5 ? {} : begunHome(seed, random, knowsItself);
  const start = begin(context, answers);
  const saved: Answers[] = [];
  const ended = runScreen({
    context,
    start: random() < 0.3 ? welcome(start) : start,
    later: Promise.resolve({
      save: (now) => {
        saved.push(now);
        return random() < 0.05 ? 'The disk is full.' : null;
      },
      draftOf: (answers) => showDraft(draftOf(answers)),
    }),
    color: true,
    stdin: terminal.stdin as unknown as NodeJS.ReadStream,
    stdout: terminal.stdout as unknown as NodeJS.WriteStream,
  });
  for (let chunk = 0; chunk < 12; chunk++) {
    terminal.stdin.emit('data', randomBytes(random, IN_PROCESS));
    if (random() < 0.1) terminal.resize(random);
    await new Promise((resolve) => setImmediate(resolve));
  }
  // A sequence begun swallows what follows it at once.
  await new Promise((resolve) => setTimeout(resolve, 35));
  terminal.stdin.emit('data', Buffer.from('\x03'));
  const state = await ended;
  met(tally, `ended: ${state.ending}`);
  note(tally, `stream ${seed}`, 'the terminal as it was found', terminal.notRestored());
  note(tally, `stream ${seed}`, 'sound words on the screen', terminal.broken());
}

/** Ctrl+Z would stop the soak itself here; it goes through the pseudo-terminal. */
const IN_PROCESS = { suspend: false };

function begunHome(seed: number, random: () => number, knowsItself: Homes): Answers {
  const told = Object.entries(knowsItself(seed));
  return Object.fromEntries(told.slice(0, 2 + Math.floor(told.length * random())));
}

/** As much of a terminal as the screen face asks for, and all that was written to it. */
class FakeTerminal {
  private raw = false;
  private written = '';
  readonly stdin;
  readonly stdout;

  constructor(random: () => number) {
    this.stdin = Object.assign(new EventEmitter(), {
      isTTY: true,
      setRawMode: (raw: boolean) => {
        this.raw = raw;
      },
      resume: () => {},
      pause: () => {},
    });
    this.stdout = Object.assign(new EventEmitter(), {
      isTTY: true,
      columns: 80,
      rows: 24,
      write: (text: string) => {
        this.written += text;
        return true;
      },
    });
    if (random() < 0.5) this.resize(random);
  }

  resize(random: () => number): void {
    this.stdout.columns = 1 + Math.floor(140 * random());
    this.stdout.rows = 1 + Math.floor(60 * random());
    this.stdout.emit('resize');
  }

  /** What is still set that we have set. */
  notRestored(): string[] {
    const lastOf = (code: string) => this.written.lastIndexOf(code);
    const after = (off: string, on: string) => lastOf(off) > lastOf(on);
    return [
      ...(this.raw ? ['raw mode is on'] : []),
      ...(after('\x1b[?1049l', '\x1b[?1049h') ? [] : ['the other page is up']),
      ...(after('\x1b[?2004l', '\x1b[?2004h') ? [] : ['pastes are marked']),
      ...(after('\x1b[?25h', '\x1b[?25l') ? [] : ['the cursor is hidden']),
    ];
  }

  /** Broken numbers and words, and control bytes that are not ours. */
  broken(): string[] {
    const words = this.written.replace(OURS, '');
    const [bad] = BROKEN.exec(words) ?? [];
    const control = CONTROL.exec(words);
    return [
      ...(bad === undefined ? [] : [`"${bad}"`]),
      ...(control === null ? [] : [`U+${control[0].codePointAt(0)!.toString(16)}`]),
    ];
  }
}

/** Control sequences of ECMA-48 and line ends: what a program that draws may send. */
const OURS = /\x1b\[[0-9;?]*[A-Za-z]|[\r\n]/g;
const CONTROL = /[\x00-\x1f\x7f-\x9f\u200e\u200f\u202a-\u202e\u2066-\u2069]/;
