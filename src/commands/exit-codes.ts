/** Done, failed, called the wrong way, interrupted. */
export const DONE = 0;
export const FAILED = 1;
export const WRONG_USAGE = 2;
export const INTERRUPTED = 130;
