/** What was made by a name, as many as are wanted: a new one puts away the one not asked for the longest. */
export class LastUsed<T> {
  private readonly made = new Map<string, T>();

  constructor(private readonly most: number) {}

  /** Undefined where it is not kept, or no longer. */
  get(name: string): T | undefined {
    const known = this.made.get(name);
    if (known === undefined) return undefined;
    this.made.delete(name);
    this.made.set(name, known);
    return known;
  }

  set(name: string, value: T): void {
    this.made.delete(name);
    this.made.set(name, value);
    if (this.made.size > this.most) this.made.delete(this.made.keys().next().value!);
  }
}
