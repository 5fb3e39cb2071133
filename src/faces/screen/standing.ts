/**
 * Which step (a question, its help, the plan) stands on the screen. A key belongs to the step that stood there when
 * it was pressed; what was typed ahead of a step is not meant for it. No clock is asked, for a terminal cannot tell
 * a held key from presses: a new step is drawn once the keyboard was found empty, and what came until then is not its.
 */
export class Standing {
  private step: string | null = null;
  private heard = false;
  private waiting = false;

  /** True when keys belong to this step. */
  is(step: string): boolean {
    return this.step === step;
  }

  /** Keys belong to this step from now on: it is drawn, or was certain before. */
  set(step: string): void {
    this.step = step;
  }

  /** Keys have arrived. */
  hear(): void {
    this.heard = true;
  }

  /** Do this once nothing lies in the keyboard any more. */
  whenQuiet(then: () => void): void {
    if (this.waiting) return;
    this.waiting = true;
    this.look(then);
  }

  /** Between two immediates the event loop reads the keyboard once. */
  private look(then: () => void): void {
    this.heard = false;
    setImmediate(() =>
      setImmediate(() => {
        if (this.heard) return this.look(then);
        this.waiting = false;
        then();
      }),
    );
  }
}
