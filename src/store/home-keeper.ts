import type { Answer, Answers } from '../interview/answers';
import type { Interview } from '../interview/questions/question';
import type { Unfinished } from '../interview/unfinished';
import { codeOf, type Disk, realDisk } from './disk';
import { changesOf, editHome, sameAnswer } from './edit-home';
import { sayFault } from './home-file';
import { mergeAnswers } from './merge-homes';
import { parseHome } from './read-home';
import { readText } from './read-text';
import { saySystemError } from './say-system-error';
import { writeFileWhole } from './write-file-whole';
import { homeText, type KeptHome } from './write-home';

/** What somebody else wrote into the file while the interview ran. */
export interface Outside {
  /** Both sides' answers together, without those in `both`. */
  readonly answers: Answers;
  /** Questions that both sides answered anew and not alike, with what the file says; null where it took the answer out. */
  readonly both: readonly { readonly id: string; readonly theirs: Answer | null }[];
}

export type Kept =
  | { readonly ok: true; readonly outside: Outside | null }
  | { readonly ok: false; readonly says: string };

/** The file as we last read or wrote it. */
interface Base {
  readonly text: string | null;
  readonly asOf: string | null;
  readonly answers: Answers;
  readonly unfinished: Unfinished;
}

const NOTHING: Base = { text: null, asOf: null, answers: {}, unfinished: {} };

/**
 * Keeps one home in its file. Each time the file is looked at first: what somebody else changed in it stays, and only
 * what changed on our side is written. "Kept" is said after the file was read back.
 */
export class HomeKeeper {
  private base: Base;
  /** Questions being asked afresh: until then the file goes on saying what it says. */
  private readonly asking = new Set<string>();

  constructor(
    readonly path: string,
    private readonly interview: Interview,
    private readonly disk: Disk = realDisk,
  ) {
    this.base = this.atStart();
  }

  /** Put what was told into the file. Never throws. */
  keep(home: KeptHome): Kept {
    try {
      return this.write(home);
    } catch (error) {
      return { ok: false, says: saySystemError(error, 'write', this.path) };
    }
  }

  /** Which of these answers the file on the disk does not hold, by question; read afresh. */
  missing({ answers, unfinished = {} }: KeptHome): string[] {
    const file = this.readBack();
    const lost = (ours: object, theirs: Readonly<Record<string, unknown>>) =>
      Object.entries(ours)
        .filter(([id, told]) => !sameAnswer(told, theirs[id]))
        .map(([id]) => id);
    return [...lost(answers, file.answers), ...lost(unfinished, file.unfinished)];
  }

  /** Take the file away, if it still is as we wrote it. A sentence when that failed, else null. */
  remove(): string | null {
    try {
      if (this.textNow() === this.base.text && this.base.text !== null) this.disk.unlink(this.path);
      return null;
    } catch (error) {
      return saySystemError(error, 'remove', this.path);
    }
  }

  private write(home: KeptHome): Kept {
    const text = this.textNow();
    const theirs = text === this.base.text ? this.base : this.changedBy(text);
    if ('says' in theirs) return { ok: false, says: theirs.says };
    const ours = this.withAsked(home.answers);
    const merged = mergeAnswers(this.base.answers, ours, theirs.answers);
    const both = merged.both.map((id) => ({ id, theirs: theirs.answers[id] ?? null }));
    const held = both.filter((one) => one.theirs !== null).map((one) => [one.id, one.theirs!]);
    const whole: Answers = { ...merged.answers, ...Object.fromEntries(held) };
    const next = this.textWith(theirs, { ...home, answers: whole });
    if (next !== text) writeFileWhole(this.path, next, this.disk);
    if (this.textNow() !== next) return { ok: false, says: this.otherwise() };
    const { asOf, unfinished = {} } = home;
    this.base = { text: next, asOf, answers: whole, unfinished };
    for (const { id } of both) this.asking.add(id);
    if (sameOf(merged.answers, ours)) return { ok: true, outside: null };
    return { ok: true, outside: { answers: this.forThem(merged.answers), both } };
  }

  /** The answers with those of the file where a question is just being asked afresh. */
  private withAsked(answers: Answers): Answers {
    const ours: Record<string, Answer> = { ...answers };
    for (const id of this.asking) {
      if (ours[id] !== undefined) this.asking.delete(id);
      else if (this.base.answers[id] !== undefined) ours[id] = this.base.answers[id];
    }
    return ours;
  }

  /** Answers as the interview is to have them: a question asked afresh has none. */
  private forThem(answers: Answers): Answers {
    return Object.fromEntries(Object.entries(answers).filter(([id]) => !this.asking.has(id)));
  }

  private textWith(theirs: Base, home: KeptHome): string {
    if (theirs.text === null) return homeText(this.interview, home);
    const { unfinished = {}, asOf } = home;
    const answers = changesOf(theirs.answers, home.answers);
    const same = Object.keys(answers).length === 0 && sameAnswer(theirs.unfinished, unfinished);
    if (same && theirs.asOf === asOf) return theirs.text;
    const changes = { answers, unfinished, asOf: theirs.asOf === asOf ? null : asOf };
    return editHome(theirs.text, this.interview, changes);
  }

  /** What somebody else made of the file. Where it was taken away, it is written again whole. */
  private changedBy(text: string | null): Base | { readonly says: string } {
    if (text === null) return { ...this.base, text: null };
    const read = parseHome(text, this.interview);
    if (read.ok) return { ...read, text };
    const fault = sayFault(this.path, read.faults[0]!);
    return {
      says: `Somebody else changed this home file, and it cannot be read now. Mend it there; until then nothing is written into it. ${fault}`,
    };
  }

  private otherwise(): string {
    return `Could not write ${this.path}: it does not hold what was written into it. Look whether another program changes it.`;
  }

  private textNow(): string | null {
    try {
      return readText(this.path, this.disk);
    } catch (error) {
      if (codeOf(error) === 'ENOENT') return null;
      throw error;
    }
  }

  private readBack(): Pick<Base, 'answers' | 'unfinished'> {
    try {
      const read = parseHome(this.textNow() ?? '', this.interview);
      return read.ok ? read : NOTHING;
    } catch {
      return NOTHING;
    }
  }

  private atStart(): Base {
    try {
      const text = this.textNow();
      if (text === null) return NOTHING;
      const read = parseHome(text, this.interview);
      return read.ok ? { ...read, text } : { ...NOTHING, text: '' };
    } catch {
      return NOTHING;
    }
  }
}

function sameOf(one: Answers, other: Answers): boolean {
  return Object.keys(changesOf(one, other)).length === 0;
}
