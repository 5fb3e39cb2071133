import type { Known, Resolved } from '../interview/questions/resolve';

/** Stands for "which questions apply at all", where somebody goes through them. */
export const ALL = '*';

/** What is known, noting in which order it is asked for. */
export class AskedFor implements Resolved {
  readonly asked = new Set<string>();

  constructor(private readonly known: Resolved) {}

  get(id: string): Known | undefined {
    this.asked.add(id);
    return this.known.get(id);
  }

  has(id: string): boolean {
    this.asked.add(id);
    return this.known.has(id);
  }

  get size(): number {
    return this.whole().size;
  }

  keys(): MapIterator<string> {
    return this.whole().keys();
  }

  values(): MapIterator<Known> {
    return this.whole().values();
  }

  entries(): MapIterator<[string, Known]> {
    return this.whole().entries();
  }

  [Symbol.iterator](): MapIterator<[string, Known]> {
    return this.entries();
  }

  forEach(each: (value: Known, key: string, map: ReadonlyMap<string, Known>) => void): void {
    this.whole().forEach(each);
  }

  private whole(): Resolved {
    this.asked.add(ALL);
    return this.known;
  }
}

/** What `id` was found to be, as a text to compare. */
export function foundAs(known: Resolved, id: string): string {
  if (id === ALL) return [...known.keys()].map((one) => `${one} ${foundAs(known, one)}`).join('\n');
  return textOf(known.get(id));
}

/** The same of what was found; a text is one already. */
export function textOf(found: Known | string | undefined): string {
  if (typeof found === 'string') return found;
  return found === undefined ? '' : `${found.how} ${JSON.stringify(found.value)}`;
}
