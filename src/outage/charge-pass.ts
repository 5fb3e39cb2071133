import { BlockPass } from './block-pass';

/**
 * For an outage of a fixed length on a store of `capKwh`: the two numbers of `Window` that say what
 * goes unserved, for every start hour and every starting charge at once:
 * unserved(x) = unavoidable + max(0, threshold - x).
 *
 * The compositions are `compose` of `window.ts` with one side a single hour, on plain numbers.
 */
export class ChargePass extends BlockPass {
  readonly #cap: number;
  readonly #headS: Float64Array;
  readonly #headV: Float64Array;
  /** Five numbers an hour: A, L, H, S, V. */
  readonly #tail: Float64Array;
  readonly #headALH = new Float64Array(3);
  #threshold: Float64Array = new Float64Array(0);
  #unavoidable: Float64Array = new Float64Array(0);

  constructor(hours: number, capKwh: number) {
    super(hours);
    if (!(capKwh >= 0 && capKwh < Infinity)) {
      throw new RangeError(`capKwh must be at least 0 kWh: ${capKwh} kWh`);
    }
    this.#cap = capKwh;
    this.#headS = new Float64Array(hours);
    this.#headV = new Float64Array(hours);
    this.#tail = new Float64Array(5 * hours);
  }

  /**
   * Take the next hours of net stored energy and write what is now known from `at` on.
   * Gives how many start hours were written.
   */
  push(net: Float64Array, threshold: Float64Array, unavoidable: Float64Array, at = 0): number {
    this.#threshold = threshold;
    this.#unavoidable = unavoidable;
    return this.feed(net, at);
  }

  protected growHead(from: number, upTo: number): void {
    const block = this.block;
    const headS = this.#headS;
    const headV = this.#headV;
    const cap = this.#cap;
    let A = this.#headALH[0]!;
    let L = this.#headALH[1]!;
    let H = this.#headALH[2]!;
    let S = from === 0 ? 0 : headS[from - 1]!;
    let V = from === 0 ? 0 : headV[from - 1]!;
    for (let i = from; i < upTo; i++) {
      const a = block[i]!;
      if (i === 0) {
        A = 0;
        L = 0;
        H = cap;
        S = -a;
      } else {
        if (-a > L && H > L) S = Math.min(-a, H) - A;
        V += Math.max(0, -a - H);
      }
      A += a;
      L = within(L + a, cap);
      H = within(H + a, cap);
      headS[i] = S;
      headV[i] = V;
    }
    this.#headALH[0] = A;
    this.#headALH[1] = L;
    this.#headALH[2] = H;
  }

  protected join(from: number, upTo: number, at: number): void {
    const threshold = this.#threshold;
    const unavoidable = this.#unavoidable;
    const tail = this.#tail;
    const headS = this.#headS;
    const headV = this.#headV;
    for (let i = from, k = at; i < upTo; i++, k++) {
      const j = 5 * (i + 1);
      const S = headS[i]!;
      const least = tail[j + 1]!;
      const most = tail[j + 2]!;
      let before = tail[j + 3]!;
      if (S > least && most > least) before = Math.min(S, most) - tail[j]!;
      threshold[k] = before;
      unavoidable[k] = tail[j + 4]! + headV[i]! + Math.max(0, S - most);
    }
  }

  protected writeBlock(at: number): void {
    this.#threshold[at] = this.#headS[this.hours - 1]!;
    this.#unavoidable[at] = this.#headV[this.hours - 1]!;
  }

  protected closeTails(): void {
    const block = this.block;
    const tail = this.#tail;
    const cap = this.#cap;
    let A = 0;
    let L = 0;
    let H = cap;
    let S = 0;
    let V = 0;
    for (let j = this.hours - 1; j > 0; j--) {
      const a = block[j]!;
      V += Math.max(0, S - cap);
      S = within(S, cap) - a;
      const low = between(A, L, H);
      H = between(cap + A, L, H);
      L = low;
      A += a;
      const k = 5 * j;
      tail[k] = A;
      tail[k + 1] = L;
      tail[k + 2] = H;
      tail[k + 3] = S;
      tail[k + 4] = V;
    }
  }
}

function within(value: number, cap: number): number {
  return value < 0 ? 0 : Math.min(value, cap);
}

function between(value: number, low: number, high: number): number {
  return value < low ? low : Math.min(value, high);
}
