import { existsSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import interview from '#compiled/questions.js';
import type { Answer, Answers } from '../../../src/interview/answers';
import { begin, welcome } from '../../../src/interview/begin';
import { offered, questionAt } from '../../../src/interview/questions/relevant';
import { resolve } from '../../../src/interview/questions/resolve';
import { reduce } from '../../../src/interview/reduce';
import type { Context, State } from '../../../src/interview/state';
import { parseHome } from '../../../src/store/read-home';
import { seeded } from '../../fixtures/random-problem';
import { type OpenTerminal, openTerminal } from '../../pty/open-terminal';
import { answerTo } from '../../random-answer';
import { met, note, type Part, type Tally } from '../part';
import { PROGRAM } from '../through-terminal';

const HOME = 'oak.home.yaml';
const WINDOW = { columns: 100, rows: 40 };
/** The first kill, and the last, after the start of the program, ms. */
const FIRST_MS = 100;
const LAST_MS = 6000;

const context: Context = {
  interview,
  short: false,
  nameProblem: () => null,
  spareName: () => 'home-1',
};

/** The real program killed at some moment of a sitting: at most the answer being typed is lost, and it goes on. */
export const kills: Part = {
  whole: 300,
  of: 'kill',
  async try(seed, tally) {
    const random = seeded(seed ^ 0x6b11);
    const terminal = openTerminal([PROGRAM], WINDOW);
    // Half of the kills fall by the clock, half just after an Enter, when an answer is being kept.
    const after = FIRST_MS + (LAST_MS - FIRST_MS) * random() ** 2;
    const answersBefore = seed % 2 === 0 ? Math.floor(12 * random()) : null;
    const clock = new Promise<void>((done) =>
      setTimeout(done, answersBefore === null ? after : 15_000),
    );
    try {
      const typist = new Typist(terminal, random);
      await Promise.race([clock, typist.type(answersBefore)]);
      if (answersBefore !== null) await new Promise((done) => setTimeout(done, 40 * random()));
      terminal.kill('SIGKILL');
      typist.stop();
      await terminal.ended();
      const wrong = lost(terminal.folder, typist.sure, typist.open, tally);
      if (wrong.length === 0) wrong.push(...(await notResumed(terminal.folder, typist.sure)));
      note(tally, `kill ${seed}`, 'nothing lost, and it goes on', wrong);
    } finally {
      terminal.kill('SIGKILL');
      rmSync(terminal.folder, { recursive: true, force: true });
    }
  },
};

/** Types answers as soon as each question stands on the screen; the reducer beside it knows which comes next. */
class Typist {
  /** Answers after which the next question stood on the screen. */
  sure: Answers = {};
  /** What was typed last and may be lost. */
  open: string | null = null;
  private state: State = welcome(begin(context, {}));
  private stopped = false;

  constructor(
    private readonly terminal: OpenTerminal,
    private readonly random: () => number,
  ) {}

  stop(): void {
    this.stopped = true;
  }

  /** Until told to stop, or for so many answers after the name of the home. */
  async type(most: number | null): Promise<void> {
    await this.terminal.shows('Lampkeeper');
    this.terminal.press('\r');
    this.state = reduce(context, this.state, { type: 'act', act: 'begin' });
    for (let answers = 0; !this.stopped; answers++) {
      const question = questionAt(context, this.state.at);
      if (!(await this.stands(question.ask))) return;
      this.sure = this.state.answers;
      this.open = null;
      if (most !== null && answers >= most + 2) return;
      const answer = this.answer();
      this.open = question.id;
      this.terminal.press(this.keysFor(answer));
      this.state = reduce(context, this.state, { type: 'answer', answer });
      if (this.state.view !== 'ask') return;
    }
  }

  private async stands(ask: string): Promise<boolean> {
    const squeezed = (text: string) => text.replace(/[^\p{L}\p{N}]/gu, '');
    await this.terminal.until(`"${ask}"`, () => {
      return this.stopped || squeezed(this.terminal.text()).includes(squeezed(ask));
    });
    return !this.stopped;
  }

  /** Something calm: no answer that brings up another screen, and none that is typed as a field of several. */
  private answer(): Answer {
    const question = questionAt(context, this.state.at);
    if (question.kind === 'name') return 'oak';
    if (question.id === interview.dangers.question) return ['none'];
    const known = new Map(resolve(interview.questions, this.state.answers, 'assume'));
    const draw = { random: this.random, known, commonShare: 0, usualOnly: true };
    const answer = answerTo(question, draw);
    const ids = [answer].flat();
    const urgent = question.choices?.some((c) => c.actNow !== undefined && ids.includes(c.id));
    return urgent ? this.answer() : answer;
  }

  private keysFor(answer: Answer): string {
    const question = questionAt(context, this.state.at);
    if (question.choices === undefined) return `${[answer].flat().join(', ')}\r`;
    const rows = offered(context, this.state, question).map((choice) => choice.id);
    const ids = [answer].flat().map(String);
    const ticks = question.kind === 'choices' ? ' ' : '';
    let at = -1;
    const moves = rows.flatMap((id, row) => {
      if (!ids.includes(id)) return [];
      const down = '\x1b[B'.repeat(row - at);
      at = row;
      return [down + ticks];
    });
    return `${moves.join('')}\r`;
  }
}

/** Answers that were sure and are not in the file. The danger is asked afresh, and nothing is kept before a name. */
function lost(folder: string, sure: Answers, open: string | null, tally: Tally): string[] {
  const path = join(folder, HOME);
  const named = sure['home-name'] !== undefined;
  met(tally, named ? 'killed with answers on the disk' : 'killed before the home had a name');
  if (!existsSync(path)) return named ? ['there is no home file'] : [];
  const read = parseHome(readFileSync(path, 'utf8'), interview);
  if (!read.ok) return [`the home file cannot be read: ${JSON.stringify(read.faults)}`];
  const kept = read.answers;
  return Object.entries(sure)
    .filter(([id, answer]) => id !== open && JSON.stringify(kept[id]) !== JSON.stringify(answer))
    .map(([id, answer]) => `${id} was ${answer}, the file says ${kept[id]}`);
}

/** The next start goes on, asks nothing again that was sure, and leaves nothing behind. */
async function notResumed(folder: string, sure: Answers): Promise<string[]> {
  if (!existsSync(join(folder, HOME))) return [];
  const again = openTerminal([PROGRAM, HOME], WINDOW, { folder });
  try {
    const first = questionAt(context, interview.dangers.question).ask;
    await again.until('the first question', () => {
      if (again.text().includes('another window')) return true;
      return again.text().includes(first.slice(0, 30));
    });
    if (again.text().includes('another window')) return ['a dead sitting still holds the home'];
    again.press('\x03');
    const { exitCode } = await again.ended();
    const left = readdirSync(folder).filter((file) => file.includes('oak') && file !== HOME);
    const read = parseHome(readFileSync(join(folder, HOME), 'utf8'), interview);
    // The danger is asked afresh, so what was said of it the last time goes.
    const gone = Object.keys(sure).filter(
      (id) => id !== interview.dangers.question && (!read.ok || read.answers[id] === undefined),
    );
    return [
      ...(exitCode === 130 ? [] : [`the next start left with ${exitCode}`]),
      ...(left.length === 0 ? [] : [`left behind: ${left.join(', ')}`]),
      ...(gone.length === 0 ? [] : [`lost at the next start: ${gone.join(', ')}`]),
    ];
  } finally {
    again.kill('SIGKILL');
  }
}
