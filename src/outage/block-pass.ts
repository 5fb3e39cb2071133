/**
 * Windows of a fixed length over a stream of hours, cut into blocks as long as the window: a window is
 * the tail of one block and the head of the next (van Herk 1992; Gil & Werman 1993), so an hour costs
 * three compositions whatever the length. A subclass says how heads and tails compose; nothing is
 * allocated for a window, and memory depends on the window's length, not on the number of hours.
 */
export abstract class BlockPass {
  protected readonly hours: number;
  /** Net energy of the hours of the block being filled. */
  protected readonly block: Float64Array;
  #at = 0;
  #started = false;

  constructor(hours: number) {
    if (!Number.isInteger(hours) || hours < 1) {
      throw new RangeError(`outage length must be a whole number of hours, 1 or more: ${hours} h`);
    }
    this.hours = hours;
    this.block = new Float64Array(hours);
  }

  /** Grow the head over `block[from..upTo)` and keep each head reached. */
  protected abstract growHead(from: number, upTo: number): void;
  /** Write the windows that end at `block[from..upTo)`: tail of the block before joined to each head. */
  protected abstract join(from: number, upTo: number, at: number): void;
  /** Write the window that is the whole block. */
  protected abstract writeBlock(at: number): void;
  /** Compose every tail of the finished block, last hour first. */
  protected abstract closeTails(): void;

  /** Feed hours; results go to the subclass's outputs from `at` on. Gives how many were written. */
  protected feed(net: Float64Array, at: number): number {
    let written = at;
    let from = 0;
    while (from < net.length) {
      const begin = this.#at;
      const taken = Math.min(net.length - from, this.hours - begin);
      const end = begin + taken;
      this.block.set(net.subarray(from, from + taken), begin);
      this.growHead(begin, end);
      const joined = Math.min(end, this.hours - 1);
      if (this.#started && joined > begin) {
        this.join(begin, joined, written);
        written += joined - begin;
      }
      from += taken;
      this.#at = end;
      if (end === this.hours) {
        this.writeBlock(written++);
        this.closeTails();
        this.#started = true;
        this.#at = 0;
      }
    }
    return written - at;
  }
}
