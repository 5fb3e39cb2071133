import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

/** Rooms that analyze: they speak in ids, codes and figures. */
const rooms = ['home', 'routes', 'rules', 'outage', 'bill', 'plan', 'kinds', 'words', 'papers'];

/** Letters with a space between them or a capital first: written for people, not an id. */
const SENTENCE = String.raw`['"\`](?=[^'"\`]*[A-Za-z])(?:[A-Z][^'"\`]*|[^'"\`]* [^'"\`]*)['"\`]`;

/** What reads a sentence or joins by what a thing is called. */
const reads: readonly [string, RegExp][] = [
  [
    'looks into words',
    new RegExp(String.raw`\.(?:startsWith|includes|endsWith|indexOf)\(\s*${SENTENCE}`),
  ],
  [
    'looks into words',
    /\b(?:says|why|title|because|name)(?:\.toLowerCase\(\))?\.(?:startsWith|includes|endsWith|indexOf|match|search)\(/,
  ],
  ['compares words', /\.(?:name|title|says|why|because)\s*[!=]==\s*(?!undefined|null)/],
  ['joins by words', /\.(?:has|get|includes|indexOf)\(\s*\w+\.(?:name|title|says|why)\b/],
  ['cuts sentences', /\(\?<=\[\.!\?\]\)/],
];

/** File and reason; each is held to be needed still. */
const exceptions: Readonly<Record<string, string>> = {
  'words/en/first-sentence.ts': 'the one cut for print; nothing is decided by it',
};

const files = rooms.flatMap((room) =>
  readdirSync(join('src', room), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .map((file) => `${room}/${file}`),
);

const faultsOf = (text: string) => reads.filter(([, as]) => as.test(text)).map(([what]) => what);

test('no analysis reads a sentence back: decide by an id, a code, a figure or a trait', () => {
  const faults = files
    .filter((file) => !(file in exceptions))
    .flatMap((file) =>
      readFileSync(join('src', file), 'utf8')
        .split('\n')
        .flatMap((line) => faultsOf(line).map((what) => `${file} ${what}: ${line.trim()}`)),
    );
  expect(faults).toEqual([]);
});

test('every exception is still needed', () => {
  for (const file of Object.keys(exceptions))
    expect(faultsOf(readFileSync(join('src', file), 'utf8')), file).not.toEqual([]);
});

test('the scan sees what it is there to see', () => {
  for (const line of [
    "gap.startsWith('from no blink')",
    "part.name.startsWith('Soft starter')",
    "load.why.includes('one job')",
    "route.carries.includes('Sump pump')",
    'route.carries.includes(load.name)',
    'off.has(load.name)',
    'one.name === other.name',
    'says.split(/(?<=[.!?]) /)',
  ])
    expect(faultsOf(line), line).not.toEqual([]);
  for (const line of ["goalSeasons.includes('winter')", 'route.carries.includes(load.id)'])
    expect(faultsOf(line), line).toEqual([]);
});
