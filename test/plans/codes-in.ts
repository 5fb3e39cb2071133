/** Below a value only its codes and figures, by their keys; an array of sentences is how many there are. */
export type Codes =
  | number
  | boolean
  | null
  | string
  | readonly Codes[]
  | { readonly [key: string]: Codes };

/** Names of files, routes, loads, choices and rules; a word to a person begins with a capital or holds a space. */
const CODE = /^[a-z0-9]+([-./][a-z0-9]+)*$/;
const DAY = /^\d{4}-\d{2}-\d{2}$/;

/** Codes and figures of a value: six digits of a number, no sentence, of a figure its likely, low and high value. */
export function codesIn(value: unknown): Codes | undefined {
  if (typeof value === 'number') return digits(value);
  if (typeof value === 'boolean' || value === null) return value;
  if (typeof value === 'string') return CODE.test(value) || DAY.test(value) ? value : undefined;
  if (ArrayBuffer.isView(value)) return codesIn(sumOf(value as Float64Array));
  if (Array.isArray(value)) return inList(value);
  if (typeof value !== 'object') return undefined;
  if ('source' in value && 'low' in value && 'value' in value && 'high' in value) {
    return codesIn([value.value, value.low, value.high]);
  }
  const entries = Object.entries(value).flatMap(([key, one]): [string, Codes][] => {
    const codes = codesIn(one);
    return codes === undefined ? [] : [[key, codes]];
  });
  return entries.length > 0 ? Object.fromEntries(entries) : undefined;
}

function inList(list: readonly unknown[]): Codes {
  const codes = list.map((one) => codesIn(one));
  const kept = codes.filter((one) => one !== undefined);
  return kept.length === list.length ? kept : { holds: list.length, codes: kept };
}

/** A number that JSON cannot hold stays visible. */
function digits(value: number): number | string {
  return Number.isFinite(value) ? Number(value.toPrecision(6)) : `broken-${value}`.toLowerCase();
}

function sumOf(series: Float64Array) {
  return { length: series.length, sum: series.reduce((sum, one) => sum + one, 0) };
}
