import type { Answers } from '../../interview/answers';
import type { Event } from '../../interview/event';
import { isOpened } from '../../interview/go-on';
import { hider } from '../../interview/hide-words';
import type { Key } from '../../interview/keys/key';
import type { NextStep } from '../../interview/next-step';
import { reduce } from '../../interview/reduce';
import type { State } from '../../interview/state';
import { isCertainNext, stepOf } from '../../interview/step';
import { setAside } from '../../interview/unfinished';
import { wouldAnswer } from '../../interview/would-answer';
import { changeWords } from '../change-words';
import { afterSaving, type Door, type Found, type Later } from '../door';
import { draftSafely, nextSafely, SUMS_FAILED } from '../draft-safely';
import type { ShownDraft } from '../shown-draft';
import type { Weighed } from './draft-pane';
import { afterResize, eventFor, isAlwaysHeard, isForField, isRead, NOT_MEANT } from './event-for';
import type { Frame } from './frame';
import { frameOf } from './frame-of';
import { glyphsFor } from './glyphs';
import type { Hiding } from './hiding';
import { openKeyboard } from './keys/open-keyboard';
import { openCanvas } from './open-canvas';
import { isSmall } from './small-window';
import { Standing } from './standing';
import { watchSuspension } from './suspension';
import { type Taken, takeTerminal } from './terminal-modes';
import { choosesUnseen, openAfter } from './unseen';
import type { WhatIfSaid } from './views/what-if';
import { sizeOf, watchSize } from './watch-size';

/**
 * The interview on the whole window. Resolves with the state once it has ended,
 * the terminal as it was found. Answers are kept the moment they are given.
 */
export async function runScreen(door: Door): Promise<State> {
  const screen = new Screen(door);
  const terminal = takeTerminal(door, (gone) => screen.cutOff(gone));
  try {
    return await screen.run(terminal);
  } finally {
    terminal.leave();
  }
}

/** How long nothing is said of looking for the next question, ms. */
const SAY_WAITING_AFTER_MS = 150;

/** Heard also before anything can be kept. */
const NOW: readonly Key['name'][] = ['ctrl-c', 'ctrl-z'];

class Screen {
  private state: State;
  private draft: Weighed = null;
  /** What the last answer changed in the plan, or nothing to say. */
  private changed: string | null = null;
  /** Answers given since the sums were last found: one answer old they may still be shown. */
  private behind = 0;
  /** What comes next, for the answers it was found for. */
  private next: { readonly answers: Answers; readonly next: NextStep | null } | null = null;
  /** What an answer changed after a plan makes of it, for the answers it was asked for. */
  private compared: { readonly of: Answers; readonly said: WhatIfSaid } | null = null;
  private later: Later | null = null;
  /** Keys that came before anything could be kept. */
  private readonly early: Key[] = [];
  /** Answers last kept on disk, and last weighed. */
  private kept: Pick<State, 'answers' | 'unfinished'>;
  private shown: Pick<Frame, 'maxScroll' | 'page'> = { maxScroll: 0, page: 1 };
  private readonly glyphs = glyphsFor(process.env);
  private readonly canvas;
  private finish: () => void = () => {};
  private suspend: () => void = () => {};
  private readonly standing = new Standing();
  /** What a shared screen hides stands open: until the next key, or while one chooses in a list. */
  private open = false;
  /** The last key would have chosen what nobody could see. */
  private unseen = false;
  private slow: NodeJS.Timeout | undefined;

  constructor(private readonly door: Door) {
    this.state = door.start;
    this.kept = door.start;
    this.canvas = openCanvas(door.stdout);
    // The first question is the same for everybody.
    this.standing.set(stepOf(door.start));
  }

  async run(terminal: Taken): Promise<State> {
    const { stdin, stdout, later } = this.door;
    // The keyboard first: from the first question on, Ctrl+C is a key and not a signal.
    const keyboard = openKeyboard({
      stdin,
      onKeys: (keys) => this.onKeys(keys),
      onGone: () => terminal.gone(),
    });
    this.draw();
    const stopWatching = watchSize(stdout, () => {
      this.state = afterResize(this.door.context, this.state, this.shown);
      this.draw('anew');
    });
    const suspension = watchSuspension({
      lend: () => {
        this.canvas.close();
        keyboard.rest();
        terminal.lend();
      },
      retake: () => {
        terminal.retake();
        keyboard.wake();
        this.draw();
      },
    });
    this.suspend = () => {
      const { answers } = this.state;
      this.later?.save(answers, setAside(this.door.context, this.state).unfinished);
      suspension.suspend();
    };
    const ended = new Promise<void>((resolve) => {
      this.finish = resolve;
    });
    try {
      const loaded = later.then((ready) => this.onLoaded(ready));
      await Promise.race([ended, loaded.then(() => ended)]);
      await loaded;
    } finally {
      clearTimeout(this.slow);
      this.later?.apart?.close();
      this.later?.whatIf?.close();
      keyboard.close();
      stopWatching();
      suspension.close();
      this.canvas.close();
    }
    return this.state;
  }

  /** We are told to end, or the terminal is closed over us: keep what stands in the field. False when that failed and is to be said. */
  async cutOff(gone: boolean): Promise<boolean> {
    this.happen({ type: 'key', key: { name: 'ctrl-c' } });
    this.later ??= await this.door.later;
    const { answers, unfinished } = this.state;
    const saved = this.later.save(answers, unfinished);
    if (gone || typeof saved !== 'string') return true;
    // What could not be kept is printed by whoever called us.
    this.finish();
    return false;
  }

  private draw(how: 'over' | 'anew' = 'over'): void {
    clearTimeout(this.slow);
    if (this.state.view === 'wait' && how === 'over' && !this.standing.is(stepOf(this.state))) {
      // Mostly the next question is there before anybody could read that it is looked for.
      this.slow = setTimeout(() => this.drawNow(how), SAY_WAITING_AFTER_MS);
      return;
    }
    this.drawNow(how);
  }

  private drawNow(how: 'over' | 'anew'): void {
    const now = () => {
      if (this.state.ending !== null) return;
      if (!isSmall(sizeOf(this.door.stdout))) this.standing.set(stepOf(this.state));
      if (how === 'anew') this.canvas.redraw(() => this.frame());
      else this.canvas.draw(() => this.frame());
    };
    if (this.standing.is(stepOf(this.state))) now();
    else this.standing.whenQuiet(now);
  }

  private frame() {
    const { context, stdout } = this.door;
    const { state, changed, glyphs } = this;
    const draft = this.behind > 1 ? null : this.draft;
    const hiding = this.hiding();
    const frame = frameOf({
      context,
      state,
      draft,
      changed,
      size: sizeOf(stdout),
      glyphs,
      ...(this.compared?.of === state.answers ? { compared: this.compared.said } : {}),
      ...(hiding === null ? {} : { hiding }),
    });
    this.shown = frame;
    return frame;
  }

  /** What is hidden of a screen that others see. The name may still stand in its field. */
  private hiding(): Hiding | null {
    const { shared, context } = this.door;
    if (shared === undefined) return null;
    const { answers, field, at } = this.state;
    const own = [answers['home-name'], at === 'home-name' ? field.text : ''].map((name) =>
      typeof name === 'string' ? name : '',
    );
    const hide = hider(context.interview, [...shared.names, ...own], this.glyphs.dots);
    return { open: this.open, unseen: this.unseen, hide };
  }

  private onKeys(keys: readonly Key[]): void {
    if (this.later === null && !keys.some(({ name }) => NOW.includes(name))) {
      // Nothing is taken before it can be kept.
      this.early.push(...keys);
      return;
    }
    this.standing.hear();
    let dropped = false;
    for (const key of keys) {
      if (this.state.ending !== null) break;
      // What follows Ctrl+Z is meant for the shell.
      if (key.name === 'ctrl-z') {
        this.suspend();
        return;
      }
      if (!isAlwaysHeard(key) && !this.isMeant(key)) {
        dropped = true;
        continue;
      }
      this.take(key);
    }
    if (dropped && this.state.ending === null) this.happen({ type: 'notice', text: NOT_MEANT });
    if (this.state.ending === null) this.draw();
    else this.finish();
  }

  private isMeant(key: Key): boolean {
    if (!this.standing.is(stepOf(this.state))) return false;
    return !isSmall(sizeOf(this.door.stdout)) || isForField(this.door.context, this.state, key);
  }

  private take(key: Key): void {
    const before = this.state;
    this.unseen = choosesUnseen(this.door.context, before, key, this.hiding());
    if (this.unseen) return;
    if (key.name !== 'show') this.happen(eventFor(before, key, this.shown));
    if (this.door.shared !== undefined) {
      this.open = openAfter(this.door.context, { before, key, after: this.state, open: this.open });
    }
    if (key.name === 'show') return;
    this.keep(key.name === 'enter');
    this.onward();
    this.lean();
    this.compare();
    if (isCertainNext(this.door.context, before, this.state)) {
      this.standing.set(stepOf(this.state));
    }
    // How far the next key may scroll depends on what this one has brought up.
    if (isRead(this.state) && !isSmall(sizeOf(this.door.stdout))) this.frame();
  }

  private happen(event: Event): void {
    const scroll = Math.min(this.state.scroll, this.shown.maxScroll);
    this.state = reduce(this.door.context, { ...this.state, scroll }, event);
  }

  /** Both plans are laid side by side, once for the same answers. */
  private compare(): void {
    const { answers, changing, view } = this.state;
    if (view !== 'compare' || changing === null || this.compared?.of === answers) return;
    this.compared = { of: answers, said: 'working' };
    this.later?.whatIf?.look(changing.before, { answers, size: 0 }, (said) => {
      if (this.compared?.of !== answers) return;
      this.compared = { of: answers, said };
      if (this.state.ending === null) this.draw();
    });
  }

  private onLoaded(later: Later): void {
    this.later = later;
    this.keep();
    this.look();
    const early = this.early.splice(0);
    if (early.length > 0) this.onKeys(early);
    else if (this.state.ending === null) this.draw();
  }

  /** Keep changed answers on disk, and only then weigh them. What could not be kept is tried again at each key that counts. */
  private keep(again = false): void {
    const { answers, unfinished, unsaved } = this.state;
    const { kept, later } = this;
    if (later === null) return;
    const same = answers === kept.answers && unfinished === kept.unfinished;
    if (same && !(again && unsaved !== null)) return;
    const saved = later.save(answers, unfinished);
    for (const event of afterSaving(saved)) this.happen(event);
    // What came from the file is in the file.
    this.kept = typeof saved === 'string' ? { answers, unfinished } : this.state;
    if (this.state.answers !== kept.answers) this.look();
  }

  /** Weigh the answers as they are now, and look for what comes next once the opening has ended. */
  private look(): void {
    const { later, state } = this;
    const { context } = this.door;
    const { answers } = state;
    const wantsNext = context.guided === true && isOpened(context, answers);
    this.behind += 1;
    if (later?.apart !== undefined) {
      later.apart.look(answers, wantsNext, (found) => this.onFound(answers, found));
    } else if (later !== null) {
      this.onFound(answers, { draft: draftSafely(later, answers) });
      if (wantsNext) this.onFound(answers, { next: nextSafely(later, answers) });
    }
  }

  /** What Enter would answer now is looked at while somebody still thinks about it. */
  private lean(): void {
    const answers = wouldAnswer(this.door.context, this.state);
    if (answers !== null) this.later?.apart?.lean(answers);
  }

  private onFound(answers: Answers, { draft, next }: Found): void {
    if (answers !== this.state.answers || this.state.ending !== null) return;
    if (draft !== undefined) {
      const known = this.behind === 1 && this.draft !== null && this.draft !== SUMS_FAILED;
      const before = known ? (this.draft as ShownDraft).glance : null;
      this.changed =
        before === null || draft === SUMS_FAILED ? null : changeWords(before, draft.glance);
      this.draft = draft;
      this.behind = 0;
    }
    if (next !== undefined) this.next = { answers, next };
    this.onward();
    this.draw();
  }

  /** Where the next question was waited for and is found, it is asked. */
  private onward(): void {
    const { state, next } = this;
    if (state.view !== 'wait' || next === null || next.answers !== state.answers) return;
    this.happen({ type: 'next', next: next.next });
  }
}
