import type { Tariff } from '../../bill/tariff/tariff';

/** A named thing with its quantity. */
export interface NamedValue {
  readonly name: string;
  readonly value: number;
}

export type Value = number | string | readonly NamedValue[];

/** Inputs as understood, in the units of their inputs. Asking for one of another kind throws: that is our own bug. */
export class Values {
  readonly #byKey: ReadonlyMap<string, Value>;

  /** `ownTariff`: the tariff read from a file, where one was named. */
  constructor(
    byKey: ReadonlyMap<string, Value>,
    readonly ownTariff: Tariff | null = null,
  ) {
    this.#byKey = byKey;
  }

  has(key: string): boolean {
    return this.#byKey.has(key);
  }

  number(key: string): number {
    const value = this.#byKey.get(key);
    if (typeof value !== 'number') throw new RangeError(`no number was given for ${key}`);
    return value;
  }

  numberOrNull(key: string): number | null {
    return this.has(key) ? this.number(key) : null;
  }

  word(key: string): string {
    const value = this.#byKey.get(key);
    if (typeof value !== 'string') throw new RangeError(`no word was given for ${key}`);
    return value;
  }

  wordOrNull(key: string): string | null {
    return this.has(key) ? this.word(key) : null;
  }

  /** Empty when it was not given. */
  list(key: string): readonly NamedValue[] {
    const value = this.#byKey.get(key) ?? [];
    if (typeof value !== 'object') throw new RangeError(`no list was given for ${key}`);
    return value;
  }
}
