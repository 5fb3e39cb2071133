import { BlockPass } from './block-pass';

/**
 * For an outage of a fixed length that starts with a full store: the usable storage, kWh, that leaves
 * nothing unserved, for every start hour. It is the largest fall of the running net-energy sum inside
 * the window (the sequent-peak method, Thomas & Burden 1963), so it does not depend on a battery size:
 * one pass answers for every size at once.
 *
 * A run of hours is (T, P, Q, M): sum; deepest fall from its start; fall left at its end; deepest fall.
 *   T = Tf + Tg   P = max(Pf, Pg - Tf)   Q = max(Qg, Qf - Tg)   M = max(Mf, Mg, Qf + Pg)
 */
export class DrawdownPass extends BlockPass {
  readonly #headP: Float64Array;
  readonly #headM: Float64Array;
  readonly #tailQ: Float64Array;
  readonly #tailM: Float64Array;
  #needed: Float64Array = new Float64Array(0);
  #t = 0;
  #q = 0;

  constructor(hours: number) {
    super(hours);
    this.#headP = new Float64Array(hours);
    this.#headM = new Float64Array(hours);
    this.#tailQ = new Float64Array(hours);
    this.#tailM = new Float64Array(hours);
  }

  /**
   * Take the next hours of net stored energy and write what is now known into `needed` from `at` on.
   * Gives how many were written: none until the first window is whole, then one for each hour pushed.
   */
  push(net: Float64Array, needed: Float64Array, at = 0): number {
    this.#needed = needed;
    return this.feed(net, at);
  }

  protected growHead(from: number, upTo: number): void {
    const block = this.block;
    const headP = this.#headP;
    const headM = this.#headM;
    let t = from === 0 ? 0 : this.#t;
    let q = from === 0 ? 0 : this.#q;
    let p = from === 0 ? 0 : headP[from - 1]!;
    let m = from === 0 ? 0 : headM[from - 1]!;
    for (let i = from; i < upTo; i++) {
      const a = block[i]!;
      t += a;
      if (-t > p) p = -t;
      q = q > a ? q - a : 0;
      if (q > m) m = q;
      headP[i] = p;
      headM[i] = m;
    }
    this.#t = t;
    this.#q = q;
  }

  protected join(from: number, upTo: number, at: number): void {
    const needed = this.#needed;
    const headP = this.#headP;
    const headM = this.#headM;
    const tailQ = this.#tailQ;
    const tailM = this.#tailM;
    for (let i = from, k = at; i < upTo; i++, k++) {
      const across = tailQ[i + 1]! + headP[i]!;
      const head = headM[i]!;
      const tail = tailM[i + 1]!;
      const most = Math.max(tail, head);
      needed[k] = Math.max(across, most);
    }
  }

  protected writeBlock(at: number): void {
    this.#needed[at] = this.#headM[this.hours - 1]!;
  }

  protected closeTails(): void {
    const block = this.block;
    const tailQ = this.#tailQ;
    const tailM = this.#tailM;
    let t = 0;
    let p = 0;
    let q = 0;
    let m = 0;
    for (let j = this.hours - 1; j > 0; j--) {
      const a = block[j]!;
      const left = (a < 0 ? -a : 0) - t;
      if (left > q) q = left;
      p = p > a ? p - a : 0;
      if (p > m) m = p;
      t += a;
      tailQ[j] = q;
      tailM[j] = m;
    }
  }
}
