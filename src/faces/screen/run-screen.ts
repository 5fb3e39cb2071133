import type { Event } from '../../interview/event';
import type { Key } from '../../interview/key';
import { reduce } from '../../interview/reduce';
import type { State } from '../../interview/state';
import type { Draft } from '../../plan/draft';
import type { Door, Later } from '../door';
import { eventFor } from './event-for';
import type { Frame } from './frame';
import { frameOf } from './frame-of';
import { glyphsFor } from './glyphs';
import { openKeyboard } from './keys/open-keyboard';
import { openCanvas } from './open-canvas';
import { takeTerminal } from './terminal-modes';
import { sizeOf, watchSize } from './watch-size';

/**
 * The interview on the whole window. Resolves with the state once it has ended,
 * the terminal as it was found. Answers are kept the moment they are given.
 */
export async function runScreen(door: Door): Promise<State> {
  const screen = new Screen(door);
  const leave = takeTerminal(door, () => screen.cutOff());
  try {
    return await screen.run();
  } finally {
    leave();
  }
}

class Screen {
  private state: State;
  private draft: Draft | null = null;
  private later: Later | null = null;
  /** Answers last kept on disk, and last weighed. */
  private kept: Pick<State, 'answers' | 'unfinished'>;
  private shown: Pick<Frame, 'maxScroll' | 'page'> = { maxScroll: 0, page: 1 };
  private readonly glyphs = glyphsFor(process.env);
  private readonly canvas;
  private finish: () => void = () => {};

  constructor(private readonly door: Door) {
    this.state = door.start;
    this.kept = door.start;
    this.canvas = openCanvas(door.stdout);
  }

  async run(): Promise<State> {
    const { stdin, stdout, later } = this.door;
    // The keyboard first: from the first question on, Ctrl+C is a key and not a signal.
    const keyboard = openKeyboard({ stdin, onKeys: (keys) => this.onKeys(keys) });
    this.canvas.draw(this.frame());
    const stopWatching = watchSize(stdout, () => this.canvas.redraw(this.frame()));
    const ended = new Promise<void>((resolve) => {
      this.finish = resolve;
    });
    try {
      const loaded = later.then((ready) => this.onLoaded(ready));
      await Promise.race([ended, loaded.then(() => ended)]);
      await loaded;
    } finally {
      keyboard.close();
      stopWatching();
      this.canvas.close();
    }
    return this.state;
  }

  /** We are told to end, or the terminal is closed over us: keep what stands in the field. */
  async cutOff(): Promise<void> {
    this.happen({ type: 'key', key: { name: 'ctrl-c' } });
    this.later ??= await this.door.later;
    this.keep();
  }

  private frame() {
    const { context, stdout } = this.door;
    const { state, draft, glyphs } = this;
    const frame = frameOf({ context, state, draft, size: sizeOf(stdout), glyphs });
    this.shown = frame;
    return frame;
  }

  private onKeys(keys: readonly Key[]): void {
    for (const key of keys) {
      if (this.state.ending !== null) break;
      this.happen(eventFor(this.state, key, this.shown));
      this.keep();
      // How far the next key may scroll depends on what this one has brought up.
      if (this.state.view === 'help' || this.state.view === 'act-now') this.frame();
    }
    if (this.state.ending === null) this.canvas.draw(this.frame());
    else this.finish();
  }

  private happen(event: Event): void {
    const scroll = Math.min(this.state.scroll, this.shown.maxScroll);
    this.state = reduce(this.door.context, { ...this.state, scroll }, event);
  }

  private onLoaded(later: Later): void {
    this.later = later;
    this.draft = later.weigh(this.state.answers);
    this.keep();
    if (this.state.ending === null) this.canvas.draw(this.frame());
  }

  /** Keep changed answers on disk and weigh them, once there is something to do it with. */
  private keep(): void {
    const { answers, unfinished } = this.state;
    const { kept } = this;
    if (this.later === null) return;
    if (answers === kept.answers && unfinished === kept.unfinished) return;
    this.kept = { answers, unfinished };
    if (answers !== kept.answers) this.draft = this.later.weigh(answers);
    const problem = this.later.save(answers, unfinished);
    if (problem !== null) this.happen({ type: 'notice', text: problem });
  }
}
