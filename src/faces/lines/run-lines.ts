import { isatty } from 'node:tty';
import { end } from '../../interview/end';
import type { Event } from '../../interview/event';
import { LONGEST_FIELD } from '../../interview/keys/text-field';
import { questionAt } from '../../interview/questions/relevant';
import { reduce } from '../../interview/reduce';
import type { State } from '../../interview/state';
import { isCertainNext, stepOf } from '../../interview/step';
import { words } from '../../interview/words';
import { afterSaving, type Door, type Later } from '../door';
import { draftSafely, nextSafely, SUMS_FAILED } from '../draft-safely';
import { NO_SUMS, NOTHING_NAMED, rankWords, sumWords, widthWords } from '../draft-words';
import { glanceWords } from '../glance-words';
import { hangUp } from '../hang-up';
import { planSoFar, type SoFar } from '../plan-so-far';
import type { WhatIfSaid } from '../screen/views/what-if';
import { comparedLines } from './compared-lines';
import { LineReader } from './line-reader';
import { lineWords } from './line-words';
import { printLines } from './print-lines';
import { printList, printRows, printView } from './print-view';
import { sayBack, toBeSureOf } from './say-back';
import { understand } from './understand';

const NOT_MEANT =
  'Lines typed before this was asked were not used. Type them again if you meant them.';

/**
 * The interview line by line: what is asked is printed once, what is typed is read as a line. No color, no redrawing,
 * so that a screen reader, a pipe or a plain terminal can follow. The end of the input keeps the answers.
 */
export async function runLines(door: Door): Promise<State> {
  const reader = new LineReader(door.stdin);
  let by: NodeJS.Signals | null = null;
  const onSignal = (signal: NodeJS.Signals) => {
    by = signal;
    reader.stop();
  };
  for (const signal of SIGNALS) process.on(signal, onSignal);
  try {
    const lines = new Lines(door, await door.later);
    const state = await lines.run(reader, () => by !== null);
    // The terminal was closed: nobody reads what else there is to say.
    if (by === 'SIGHUP' || isGone(door.stdin)) hangUp();
    return state;
  } finally {
    for (const signal of SIGNALS) process.off(signal, onSignal);
    reader.close();
  }
}

const SIGNALS: readonly NodeJS.Signals[] = ['SIGINT', 'SIGTERM', 'SIGQUIT', 'SIGHUP'];

/** A terminal that was one when we began, and is none any more. */
function isGone({ isTTY, fd }: NodeJS.ReadStream & { fd?: number }): boolean {
  return isTTY === true && !isatty(fd ?? 0);
}

class Lines {
  private state: State;
  /** As it was when the last line was taken. */
  private before: State;
  private kept: Pick<State, 'answers' | 'unfinished'>;
  /** Answers whose change was said last. */
  private comparedOf: State['answers'] | null = null;
  /** An answer in a matter of life, and the line it was typed as, until somebody says that it is right. */
  private unsure: { readonly event: Event; readonly line: string } | null = null;
  private readonly unprinted: string[] = [];
  /** Words that can be typed, as far as they were said. */
  private readonly said = new Set<string>();

  constructor(
    private readonly door: Door,
    private readonly later: Later,
  ) {
    this.state = door.start;
    this.before = door.start;
    this.kept = door.start;
  }

  async run(reader: LineReader, interrupted: () => boolean): Promise<State> {
    const { unsaved } = this.state;
    if (unsaved !== null) this.print([`Error: ${unsaved}`]);
    this.show();
    while (this.state.ending === null) {
      await this.onlyWhatIsMeant(reader);
      this.flush();
      const line = await reader.next();
      if (line === null) {
        this.state = end(this.door.context, this.state, interrupted() ? 'interrupted' : 'saved');
        this.keep();
        if (!interrupted()) this.door.onInputEnd?.();
        break;
      }
      this.take(line);
      await this.compare();
    }
    this.flush();
    return this.state;
  }

  /** A line belongs to the question that stood there. A pipe or a file is a script, and knows its questions. */
  private async onlyWhatIsMeant(reader: LineReader): Promise<void> {
    const { before, state, unsure } = this;
    this.before = state;
    if (this.door.stdin.isTTY !== true) return;
    if (stepOf(before) === stepOf(state) && unsure === null) return;
    if (unsure === null && isCertainNext(this.door.context, before, state)) return;
    if ((await reader.dropEarly()) > 0) this.print([`Error: ${NOT_MEANT}`]);
  }

  private take(line: string): void {
    if (line.length > LONGEST_FIELD) {
      this.print([`Error: ${words.lineTooLong}`]);
      return;
    }
    if (this.isSure(line)) return;
    const meant = understand(this.door.context, this.state, line);
    if (meant.kind === 'unclear') this.print([`Error: ${meant.says}`]);
    else if (meant.kind === 'event') this.askOrHappen(meant.event, line);
    else if (meant.what === 'list') this.print(printList(this.door.context, this.state));
    else this.print(this.sums());
  }

  /** True when the line says whether an answer in a matter of life is right. Anything else answers again. */
  private isSure(line: string): boolean {
    const { unsure } = this;
    this.unsure = null;
    if (unsure === null) return false;
    const said = line.trim().toLowerCase();
    if (/^(y|yes)$/.test(said) || said === unsure.line) {
      this.happen(unsure.event);
      return true;
    }
    if (!/^(n|no)$/.test(said)) return false;
    this.show();
    return true;
  }

  /** In a matter of life it is asked once whether the answer is right. A script is sure of its lines. */
  private askOrHappen(event: Event, line: string): void {
    const isScript = this.door.stdin.isTTY !== true;
    const says = isScript ? null : toBeSureOf(this.door.context, this.state, event);
    if (says === null) {
      this.happen(event);
      return;
    }
    this.unsure = { event, line: line.trim().toLowerCase() };
    this.print([says]);
  }

  private happen(event: Event): void {
    const before = this.state;
    const after = reduce(this.door.context, before, event);
    // A line that was refused is gone once a new one is typed: nothing of it waits in a field.
    this.state = after.error === null ? after : { ...after, field: before.field };
    this.state = this.onward(this.state);
    this.keep();
    const { error, notice, ending } = this.state;
    this.print(sayBack(this.door.context, before, this.state));
    if (notice !== null && notice !== before.notice) this.print([`Noted: ${notice}`]);
    if (error !== null) this.print([`Error: ${error}`, ...this.typedAgain(after.field.text)]);
    else if (ending === null) this.show();
  }

  /** Line by line nobody is kept from typing: what comes next is worked out at once. */
  private onward(state: State): State {
    if (state.view !== 'wait') return state;
    const next = nextSafely(this.later, state.answers);
    return reduce(this.door.context, state, { type: 'next', next });
  }

  /** A long line refused is said again, so that it can be copied and mended. */
  private typedAgain(text: string): string[] {
    const { kind } = questionAt(this.door.context, this.state.at);
    return kind === 'numbers' && text.trim() !== '' ? [`You typed: ${text}`] : [];
  }

  private show(): void {
    const { context } = this.door;
    const draft = this.draftHere();
    const [first = '', ...rest] = printView(context, this.state, this.said, draft);
    const plan = draft === null ? [] : planSoFar(context, this.state, draft);
    this.print(['', first, ...plan, ...rest]);
    if (this.state.view === 'ask') {
      for (const word of lineWords(this.door.context, this.state)) this.said.add(word);
    }
    // Help is said in full at once; there is nothing to leave.
    if (['help', 'tonight-help'].includes(this.state.view))
      this.happen({ type: 'act', act: 'back' });
    if (this.state.view === 'welcome') {
      this.happen({ type: 'act', act: 'begin' });
      this.before = this.state;
    }
  }

  /** Both plans, one below the other, and what may be done then. */
  private async compare(): Promise<void> {
    const { answers, changing, view } = this.state;
    const { whatIf } = this.later;
    if (view !== 'compare' || changing === null || this.comparedOf === answers) return;
    this.comparedOf = answers;
    const said = await new Promise<WhatIfSaid>((found) => {
      if (whatIf === undefined) found('failed');
      else whatIf.look(changing.before, { answers, size: 0 }, found);
    });
    this.print([...comparedLines(said), ...printRows(this.door.context, this.state)]);
  }

  private keep(): void {
    const { answers, unfinished } = this.state;
    const same = answers === this.kept.answers && unfinished === this.kept.unfinished;
    if (same && this.state.unsaved === null) return;
    this.kept = { answers, unfinished };
    const saved = this.later.save(answers, unfinished);
    for (const event of afterSaving(saved)) {
      this.state = reduce(this.door.context, this.state, event);
    }
    if (typeof saved === 'string') this.print([`Error: ${saved}`]);
    // What came from the file is in the file.
    else this.kept = { answers: this.state.answers, unfinished: this.state.unfinished };
  }

  /** What the answers add up to, at the two stations that show it. */
  private draftHere(): SoFar | null {
    const { answers, view } = this.state;
    const shows = view === 'first-plan' || view === 'enough';
    return shows ? draftSafely(this.later, answers) : null;
  }

  private sums(): string[] {
    const draft = draftSafely(this.later, this.state.answers);
    if (draft === SUMS_FAILED) return [NO_SUMS];
    if (draft.loads.length === 0) return [NOTHING_NAMED];
    const width = widthWords(draft);
    return [
      ...glanceWords(draft.glance),
      ...sumWords(draft),
      ...rankWords(draft),
      ...draft.lines,
      ...(width === null ? [] : [width]),
    ];
  }

  /** Printed once it is known what was typed before: nothing typed after it stands there is dropped. */
  private print(lines: readonly string[]): void {
    this.unprinted.push(...lines);
  }

  private flush(): void {
    printLines(this.door.stdout, this.unprinted.splice(0));
  }
}
