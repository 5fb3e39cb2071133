/** The last things made or asked for again, newest first, known by what they are; beyond so many the oldest goes. */
export class LastOnes<T> {
  private kept: T[] = [];

  constructor(private readonly most: number) {}

  /** The newest that is so, which becomes the newest of all; undefined where none is. */
  find(is: (one: T) => boolean): T | undefined {
    const at = this.kept.findIndex(is);
    if (at < 0) return undefined;
    const [one] = at === 0 ? this.kept : this.kept.splice(at, 1);
    if (at > 0) this.kept.unshift(one!);
    return one;
  }

  put(one: T): T {
    this.kept.unshift(one);
    this.kept.splice(this.most);
    return one;
  }
}
