import interview from '#compiled/questions.js';
import { demoTariffs } from '../../src/bill/tariff/demo-tariffs';
import { homeText } from '../../src/store/write-home';
import { randomHome } from '../random-home';
import type { Homes } from './pool-home';

type Random = () => number;

/** A home file as the program writes it, some with a tariff of their own and something begun. */
function soundFile(seed: number, random: Random, knowsItself: Homes): string {
  const answers = seed % 2 === 0 ? knowsItself(seed) : randomHome(seed);
  const tariff = random() < 0.3 ? pick(demoTariffs.rows, random) : null;
  const unfinished: Record<string, string> = random() < 0.2 ? { 'people-count': '12' } : {};
  return homeText(interview, { answers, asOf: '2026-11-25', tariff, unfinished });
}

/** Values that no household writes, and that readers of YAML take for something else. */
const VALUES = [
  ...['.inf', '-.inf', '.nan', '0x10', '0o17', '1e400', '-0', '1_000', '12:30:45', '2026-11-25'],
  ...['null', '~', 'yes', 'no', 'true', '""', "''", '[]', '{}', '[[[[]]]]', '[1, [2], {a: 3}]'],
  ...[
    '*anchor',
    '&anchor 5',
    '!!binary aGk=',
    '!!js/function "x"',
    '!<tag:x> 1',
    '<<',
    '? : ',
    '|',
  ],
  ...[
    '"\\x1b[31mred"',
    '"\\u202e123"',
    '"\\u0007"',
    '"\\u009b2J"',
    '"\\u2028"',
    '"\\0"',
    'é家👨‍👩‍👧',
  ],
  ...['not sure', 'none', '[none]', '[none, none]', '999999999999999999999', '1e-320', '12 apples'],
  ...['24 h', '3 days', '5 kW', '-5 W', '$1,200', '"00000"', '48911', '[not sure]', '__proto__'],
];
const KEYS = [
  ...[
    '__proto__',
    'constructor',
    'toString',
    'hasOwnProperty',
    '<<',
    '"\\u001b[2J"',
    '"\\u202ekey"',
  ],
  ...[
    'answers',
    'tariff',
    'unfinished',
    'asOf',
    'lampkeeperHome',
    'home-nam',
    '? [a, b]',
    '"": ""',
  ],
];

/** A change that knows what a line of YAML is made of. Gives all lines, changed. */
type Mutation = (lines: string[], at: number, random: Random) => string[];

const LINE = /^(\s*(?:- )?)("?[\w<][^:#]*?"?)(:\s*)(.*)$/;
const onLine = (change: (parts: RegExpExecArray, random: Random) => string): Mutation => {
  return (lines, at, random) => {
    const parts = LINE.exec(lines[at]!);
    return parts === null ? lines : replaced(lines, at, [change(parts, random)]);
  };
};
const replaced = (lines: string[], at: number, by: string[]) => [
  ...lines.slice(0, at),
  ...by,
  ...lines.slice(at + 1),
];

const mutations: Readonly<Record<string, Mutation>> = {
  value: onLine(
    ([, indent, key, colon], random) => `${indent}${key}${colon}${pick(VALUES, random)}`,
  ),
  key: onLine(
    ([, indent, , colon, value], random) => `${indent}${pick(KEYS, random)}${colon}${value}`,
  ),
  ofAnother: (lines, at, random) => {
    const other = LINE.exec(pick(lines, random))?.[4] ?? '';
    return onLine(([, indent, key, colon]) => `${indent}${key}${colon}${other}`)(lines, at, random);
  },
  choice: onLine(([, indent, key, colon], random) => {
    const question = pick(interview.questions, random);
    const id = question.choices === undefined ? '7' : pick(question.choices, random).id;
    return `${indent}${key}${colon}${random() < 0.5 ? id : `[${id}, ${id}]`}`;
  }),
  number: onLine(([, indent, key, colon, value], random) => {
    const by = pick([0, -1, 1e-9, 1e3, 1e9, 1e300, 0.5], random);
    return `${indent}${key}${colon}${value!.replace(/-?\d+(\.\d+)?/, (n) => String(Number(n) * by))}`;
  }),
  twice: (lines, at) => replaced(lines, at, [lines[at]!, lines[at]!]),
  gone: (lines, at) => replaced(lines, at, []),
  moved: (lines, at, random) => {
    const [line] = lines.splice(at, 1);
    lines.splice(Math.floor(random() * lines.length), 0, line!);
    return lines;
  },
  deeper: (lines, at, random) =>
    replaced(lines, at, [`${' '.repeat(1 + 4 * random())}${lines[at]}`]),
  shallower: (lines, at) => replaced(lines, at, [lines[at]!.replace(/^ {1,2}/, '')]),
  tab: (lines, at) => replaced(lines, at, [`\t${lines[at]}`]),
  comment: (lines, at) => replaced(lines, at, [`${lines[at]} # \u001b]0;x\u0007\u202e`]),
  many: (lines, at, random) => {
    const count = Math.floor(3000 * random() ** 3);
    return replaced(
      lines,
      at,
      [...Array(count)].map((_, i) => lines[at]!.replace(':', `${i}:`)),
    );
  },
  long: onLine(([, indent, key, colon], random) => {
    return `${indent}${key}${colon}${pick(['9', 'a', '- ', '[', '{', '"', '\\', '&a '], random).repeat(30_000 * random() ** 2)}`;
  }),
  nested: onLine(([, indent, key, colon, value], random) => {
    const deep = Math.floor(60 * random());
    return `${indent}${key}${colon}${'['.repeat(deep)}${value}${']'.repeat(deep)}`;
  }),
  document: (lines, at) => replaced(lines, at, ['---', lines[at]!, '...']),
  version: (lines, _, random) =>
    lines.map((line) =>
      line.replace(/^lampkeeperHome: 1/, `lampkeeperHome: ${pick(VALUES, random)}`),
    ),
};

/** The file after one to four changes of its structure, and now and then of its bytes. */
export function mutatedFile(seed: number, random: Random, knowsItself: Homes): Buffer {
  let lines = soundFile(seed, random, knowsItself).split('\n');
  for (let n = 1 + Math.floor(4 * random()); n > 0; n--) {
    const mutation = pick(Object.values(mutations), random);
    if (lines.length > 0) lines = mutation(lines, Math.floor(random() * lines.length), random);
  }
  return bytesOf(lines.join('\n'), random);
}

function bytesOf(text: string, random: Random): Buffer {
  const bytes = Buffer.from(text, 'utf8');
  const chance = random();
  if (chance < 0.02) return Buffer.from(text, 'utf16le');
  if (chance < 0.04) return Buffer.from(text.replaceAll('\n', '\r\n'));
  if (chance < 0.06) return Buffer.concat([Buffer.from([0xef, 0xbb, 0xbf]), bytes]);
  if (chance < 0.1) return bytes.subarray(0, Math.floor(bytes.length * random()));
  if (chance < 0.2) {
    for (let n = 0; n < 3; n++) bytes[Math.floor(bytes.length * random())] = 256 * random();
  }
  return bytes;
}

function pick<T>(list: readonly T[], random: Random): T {
  return list[Math.floor(random() * list.length)]!;
}
