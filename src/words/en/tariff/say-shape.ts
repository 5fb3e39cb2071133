import type { ShapeProblem, TariffFault, TariffPath } from '../../../bill/tariff/tariff-fault';

const shapeProblems: Readonly<Record<ShapeProblem['code'], true>> = {
  'no-such-key': true,
  'wrong-type': true,
  'not-one-of': true,
  'out-of-bounds': true,
  'not-a-day': true,
  other: true,
};

export const isShapeProblem = (problem: TariffFault['problem']): problem is ShapeProblem =>
  problem.code in shapeProblems;

/** What the form asks for, with its place before it. */
export function sayShape(problem: ShapeProblem, path: TariffPath): string {
  if (problem.code === 'no-such-key') {
    return `${placed(path.slice(0, -1))}"${problem.key}" does not belong here. "lampkeeper schema tariff" lists what does.`;
  }
  return `${placed(path)}${says(problem, path.at(-1) === 'share')}`;
}

/** "seasons 1, periods 2, price: ", counted from one as people count. */
function placed(path: TariffPath): string {
  if (path.length === 0) return '';
  const words = path.reduce<string[]>((list, key) => {
    if (typeof key === 'number' && list.length > 0) list[list.length - 1] += ` ${key + 1}`;
    else list.push(String(key));
    return list;
  }, []);
  return `${words.join(', ')}: `;
}

const types: Readonly<Record<string, string>> = {
  number: 'a number',
  int: 'a whole number',
  string: 'words',
  array: 'a list',
  tuple: 'a list of two hours, such as [16, 21]',
  object: 'lines of "key: value", indented',
};

function says(
  problem: Exclude<ShapeProblem, { readonly code: 'no-such-key' }>,
  isShare: boolean,
): string {
  switch (problem.code) {
    case 'wrong-type': {
      const type = types[problem.expected] ?? problem.expected;
      return problem.missing ? `is missing. Give ${type}.` : `must be ${type}.`;
    }
    case 'not-one-of':
      return `${problem.missing ? 'is missing. Write' : 'must be'} one of: ${problem.options.join(', ')}.`;
    case 'out-of-bounds':
      return sayBound(problem, isShare);
    case 'not-a-day':
      return 'write the day as MM-DD.';
    case 'other':
      return `${problem.message}.`;
  }
}

function sayBound(
  { of, end, bound, exact, inclusive }: Extract<ShapeProblem, { readonly code: 'out-of-bounds' }>,
  isShare: boolean,
): string {
  const word = end === 'at-least' ? 'at least' : 'at most';
  if (of === 'list') {
    return exact ? `must have ${bound} entries.` : `must have ${word} ${bound} entry.`;
  }
  if (of === 'text') return 'must not be empty.';
  const than = end === 'at-least' ? 'more' : 'less';
  const share = isShare ? ' A share of 6 % is written 0.06.' : '';
  return `must be ${inclusive ? word : `${than} than`} ${bound}.${share}`;
}
