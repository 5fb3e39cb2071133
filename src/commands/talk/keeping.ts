import type { OutsideChange, Saved } from '../../faces/door';
import type { Answers } from '../../interview/answers';
import type { Interview } from '../../interview/questions/question';
import { sayAnswer } from '../../interview/say-answer';
import type { Unfinished } from '../../interview/unfinished';
import { type Disk, realDisk } from '../../store/disk';
import { HomeKeeper, type Outside } from '../../store/home-keeper';
import { cleanBeside, lockHome } from '../../store/sitting-lock';
import { homeText } from '../../store/write-home';

/** What one sitting has to keep, and where. */
export interface ToKeep {
  asOf: string;
  answers: Answers;
  unfinished: Unfinished;
  readonly tariff: object | null;
  /** Why nothing may be written: somebody sits at this home already. */
  looking: string | null;
}

/** How it stands with the answers at the end, the file having been read again. */
export interface Settled {
  readonly file: string | null;
  /** Short names of what was told and is not in the file. */
  readonly missing: readonly string[];
  readonly why: string | null;
}

/** What stands on the screen while nothing can be written. */
const AGAIN = 'Your answers stay in this window, and each next one tries again.';

/**
 * Keeps the home of one sitting under its name, alone. When the name is changed, the file of the old one goes once the
 * new one is kept, since it may be the name that was to be taken back.
 */
export class Keeping {
  private keeper: HomeKeeper | null = null;
  /** Files of names taken back, not yet taken away. */
  private before: { keeper: HomeKeeper; release: () => void }[] = [];
  private release: () => void = () => {};

  constructor(
    private readonly toKeep: ToKeep,
    private readonly interview: Interview,
    private readonly fileOf: () => string | null,
    private readonly disk: Disk = realDisk,
  ) {}

  /** Sit down at a home, before it is read. Where somebody sits there already, one may only look. */
  sitDown(file: string): void {
    this.release();
    this.release = () => {};
    try {
      const lock = lockHome(file, this.disk);
      if (lock.ok) {
        this.release = lock.release;
        process.once('exit', lock.release);
        cleanBeside(file, this.disk);
      } else {
        this.toKeep.looking = `This home is open in another window (process ${lock.pid}), so you may only look: nothing you answer here is kept. Close the other window first. If there is none, remove ${lock.file}.`;
      }
    } catch {
      // Where no lock can be made nothing can be kept either; keeping says why.
    }
    this.keeper = new HomeKeeper(file, this.interview, this.disk);
  }

  save(answers: Answers, unfinished: Unfinished): Saved {
    this.toKeep.answers = answers;
    this.toKeep.unfinished = unfinished;
    const file = this.fileOf();
    if (file === null) return null;
    if (this.keeper?.path !== file) this.changeTo(file);
    if (this.toKeep.looking !== null) return this.toKeep.looking;
    const kept = this.keeper!.keep(this.toKeep);
    if (!kept.ok) return `${kept.says} ${AGAIN}`;
    const left = this.leaveOld();
    if (left !== null) return left;
    return kept.outside === null ? null : this.sayOutside(kept.outside);
  }

  /** Try once more, then read the file and compare. */
  settle(answers: Answers, unfinished: Unfinished): Settled {
    const saved = this.save(answers, unfinished);
    const file = this.fileOf();
    if (file === null || this.keeper === null) return { file: null, missing: [], why: null };
    const looking = this.toKeep.looking !== null;
    const ids = this.keeper
      .missing(this.toKeep)
      // Asked at every sitting, or told by the file's own name: no loss to who only looked.
      .filter((id) => !(looking && ['now-danger', 'home-name'].includes(id)));
    const missing = ids.map((id) => this.saysOf(id));
    return {
      file,
      missing,
      why: typeof saved === 'string' ? saved.replace(` ${AGAIN}`, '') : null,
    };
  }

  /** The home as a file to copy. */
  text(): string {
    return homeText(this.interview, this.toKeep);
  }

  leave(): void {
    for (const release of [this.release, ...this.before.map((one) => one.release)]) {
      release();
      process.off('exit', release);
    }
  }

  private changeTo(file: string): void {
    if (this.keeper !== null) {
      this.before.push({ keeper: this.keeper, release: this.release });
      this.release = () => {};
    }
    this.sitDown(file);
  }

  /** Take the files of names taken back away; why one is still there, else null. */
  leaveOld(): string | null {
    let problem: string | null = null;
    this.before = this.before.filter(({ keeper, release }) => {
      const failed = keeper.remove();
      if (failed === null) release();
      else problem = `${failed} It is the file of the name you took back.`;
      return failed !== null;
    });
    return problem;
  }

  private sayOutside({ answers, both }: Outside): OutsideChange {
    const ask = both.map(({ id }) => id);
    const told = both.map(({ id, theirs }) => {
      const question = this.interview.questions.find((one) => one.id === id)!;
      const say = (answer: Answers[string] | null | undefined) =>
        answer === null || answer === undefined ? 'nothing' : sayAnswer(question, answer);
      return `"${question.says}": you said ${say(this.toKeep.answers[id])}, the file now says ${say(theirs)}. Which is right?`;
    });
    const says = `Somebody else changed the home file meanwhile. Their changes are taken in. ${told.join(' ')}`;
    return { answers, ask, says: says.trim() };
  }

  private saysOf(id: string): string {
    return this.interview.questions.find((one) => one.id === id)?.says ?? id;
  }
}
