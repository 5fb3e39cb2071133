import type { z } from 'zod';
import type { ShapeProblem, TariffFault, TariffPath } from './tariff-fault';

type Issue = z.core.$ZodIssue;

/** What a schema found wrong, each with its place. */
export function shapeFaults(issue: Issue, data: unknown): TariffFault[] {
  const path = issue.path.map((key) => (typeof key === 'number' ? key : String(key)));
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({
      path: [...path, key],
      problem: { code: 'no-such-key', key },
    }));
  }
  return [{ path, problem: problemOf(issue, valueAt(data, path) === undefined) }];
}

function problemOf(issue: Issue, missing: boolean): ShapeProblem {
  switch (issue.code) {
    case 'invalid_type':
      return { code: 'wrong-type', expected: issue.expected, missing };
    case 'invalid_value':
      return { code: 'not-one-of', options: issue.values.map(String), missing };
    case 'invalid_union':
      return { code: 'not-one-of', options: optionsOf(issue), missing };
    case 'too_small':
      return outOfBounds('at-least', Number(issue.minimum), issue);
    case 'too_big':
      return outOfBounds('at-most', Number(issue.maximum), issue);
    case 'invalid_format':
      return { code: 'not-a-day' };
    default:
      return { code: 'other', message: issue.message };
  }
}

function outOfBounds(
  end: 'at-least' | 'at-most',
  bound: number,
  { origin, exact, inclusive }: Issue & { code: 'too_small' | 'too_big' },
): ShapeProblem {
  const of = origin === 'array' ? 'list' : origin === 'string' ? 'text' : 'number';
  return {
    code: 'out-of-bounds',
    of,
    end,
    bound,
    exact: exact === true,
    inclusive: inclusive !== false,
  };
}

function optionsOf(issue: Issue & { code: 'invalid_union' }): string[] {
  const own = (issue as { options?: readonly unknown[] }).options;
  if (own !== undefined) return own.map(String);
  return issue.errors
    .flat()
    .flatMap((inner) => (inner.code === 'invalid_value' ? inner.values.map(String) : []));
}

function valueAt(data: unknown, path: TariffPath): unknown {
  return path.reduce<unknown>((at, key) => {
    if (typeof at !== 'object' || at === null) return undefined;
    return Object.hasOwn(at, key) ? (at as Record<string | number, unknown>)[key] : undefined;
  }, data);
}
