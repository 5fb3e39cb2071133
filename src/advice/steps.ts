/** Work that can be laid down after each step, and be taken up again or forgotten. */
export type Steps<T> = Generator<undefined, T, void>;

/** All of it at once. */
export function inOnePiece<T>(steps: Steps<T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}
