import type { z } from 'zod';
import type { TariffFault } from './check-tariff';

type Issue = z.core.$ZodIssue;

/** What a schema found wrong, as plain sentences with their place. */
export function sayShape(issue: Issue, data: unknown): TariffFault[] {
  const path = issue.path.map((key) => (typeof key === 'number' ? key : String(key)));
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({
      path: [...path, key],
      says: `${placed(path)}"${key}" does not belong here. "lampkeeper schema tariff" lists what does.`,
    }));
  }
  return [{ path, says: `${placed(path)}${sayIssue(issue, valueAt(data, path))}` }];
}

/** "seasons 1, periods 2, price: ", counted from one as people count. */
function placed(path: TariffFault['path']): string {
  if (path.length === 0) return '';
  const words = path.reduce<string[]>((list, key) => {
    if (typeof key === 'number' && list.length > 0) list[list.length - 1] += ` ${key + 1}`;
    else list.push(String(key));
    return list;
  }, []);
  return `${words.join(', ')}: `;
}

const kinds: Readonly<Record<string, string>> = {
  number: 'a number',
  int: 'a whole number',
  string: 'words',
  array: 'a list',
  tuple: 'a list of two hours, such as [16, 21]',
  object: 'lines of "key: value", indented',
};

function sayIssue(issue: Issue, value: unknown): string {
  const missing = value === undefined;
  switch (issue.code) {
    case 'invalid_type': {
      const kind = kinds[issue.expected] ?? issue.expected;
      return missing ? `is missing. Give ${kind}.` : `must be ${kind}.`;
    }
    case 'invalid_value':
      return `${missing ? 'is missing. Write' : 'must be'} one of: ${issue.values.join(', ')}.`;
    case 'invalid_union':
      return `${missing ? 'is missing. Write' : 'must be'} one of: ${optionsOf(issue).join(', ')}.`;
    case 'too_small':
      return sayBound('at least', Number(issue.minimum), issue);
    case 'too_big':
      return sayBound('at most', Number(issue.maximum), issue);
    default:
      return `${issue.message}.`;
  }
}

function sayBound(
  word: 'at least' | 'at most',
  bound: number,
  issue: Issue & { code: 'too_small' | 'too_big' },
): string {
  if (issue.origin === 'array') {
    return issue.exact ? `must have ${bound} entries.` : `must have ${word} ${bound} entry.`;
  }
  if (issue.origin === 'string') return 'must not be empty.';
  const than = word === 'at least' ? 'more' : 'less';
  const share = issue.path.at(-1) === 'share' ? ' A share of 6 % is written 0.06.' : '';
  return `must be ${issue.inclusive === false ? `${than} than` : word} ${bound}.${share}`;
}

function optionsOf(issue: Issue & { code: 'invalid_union' }): string[] {
  const own = (issue as { options?: readonly unknown[] }).options;
  if (own !== undefined) return own.map(String);
  return issue.errors
    .flat()
    .flatMap((inner) => (inner.code === 'invalid_value' ? inner.values.map(String) : []));
}

function valueAt(data: unknown, path: TariffFault['path']): unknown {
  return path.reduce<unknown>((at, key) => {
    if (typeof at !== 'object' || at === null) return undefined;
    return Object.hasOwn(at, key) ? (at as Record<string | number, unknown>)[key] : undefined;
  }, data);
}
