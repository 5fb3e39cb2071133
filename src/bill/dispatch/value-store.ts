/**
 * The least cost from each hour to the end as a function of the charge, in straight pieces, kept for every hour of a
 * problem one after another in growing arrays. Written backward in time, read forward.
 */
export class ValueStore {
  slope: Float64Array;
  length: Float64Array;
  /** Where each hour's pieces start, and how many there are. */
  readonly first: Int32Array;
  readonly pieces: Int32Array;
  /** Least charge of each hour's function, and the cost there. */
  readonly left: Float64Array;
  readonly leftCost: Float64Array;
  /** 1 where the slopes rise from left to right. */
  readonly convex: Uint8Array;
  private end = 0;

  constructor(readonly hours: number) {
    this.slope = new Float64Array(hours * 6 + 64);
    this.length = new Float64Array(hours * 6 + 64);
    this.first = new Int32Array(hours + 1);
    this.pieces = new Int32Array(hours + 1);
    this.left = new Float64Array(hours + 1);
    this.leftCost = new Float64Array(hours + 1);
    this.convex = new Uint8Array(hours + 1).fill(1);
  }

  /** Forget what is written, to write another problem of as many hours. */
  begin(): this {
    this.end = 0;
    this.convex.fill(1);
    return this;
  }

  /** Start writing hour `h` with room for `most` pieces; gives the place to write from. */
  open(h: number, pieces: number): number {
    if (this.end + pieces > this.slope.length) this.grow(pieces);
    this.first[h] = this.end;
    return this.end;
  }

  close(h: number, pieces: number): void {
    this.pieces[h] = pieces;
    this.end = this.first[h]! + pieces;
  }

  /** Largest charge of hour h's function. */
  right(h: number): number {
    let at = this.left[h]!;
    for (let i = this.first[h]!, end = i + this.pieces[h]!; i < end; i++) at += this.length[i]!;
    return at;
  }

  /** Cost at a charge, held to the range of the function. */
  costAt(h: number, kwh: number): number {
    let at = this.left[h]!;
    let cost = this.leftCost[h]!;
    for (let i = this.first[h]!, end = i + this.pieces[h]!; i < end && at < kwh; i++) {
      const part = Math.min(this.length[i]!, kwh - at);
      cost += part * this.slope[i]!;
      at += part;
    }
    return cost;
  }

  private grow(pieces: number): void {
    const size = this.slope.length * 2 + pieces;
    const copy = (from: Float64Array) => {
      const to = new Float64Array(size);
      to.set(from);
      return to;
    };
    this.slope = copy(this.slope);
    this.length = copy(this.length);
  }
}
