/** No sentences to a household, and where they may stay. */
const reasoned: readonly [about: string, at: RegExp][] = [
  // Its message is for whoever called it wrongly.
  [
    'a fault of our own code',
    /new RangeError\(|must(?:Not)?Be|requireWithin|demandRange|throw new Error\(/,
  ],
  // Published references and units of a figure are the same in every language; test/citations.test.ts reads the former.
  ['what a figure is counted in and what is cited', /\b(?:unit|ref|title)\b|\breference\(/],
  // A code of `rules/rule.ts`; the type `Who` lets no other sentence stand there.
  ['who does a piece of work', /\bwho: $/],
  // Messages for people who type a file or a command.
  ['a fault in a file', /\.describe\(|message:|path:|fault/],
];

const LITERAL = /'((?:[^'\\\n]|\\.)*)'|"((?:[^"\\\n]|\\.)*)"|`((?:[^`\\]|\\.)*)`/g;

const withoutComments = (text: string) =>
  text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|\s)\/\/.*$/gm, '$1');

/** Two words of small letters beside each other, or one beside a figure: written to be read. */
function isSentence(literal: string): boolean {
  const plain = literal.replace(/\$\{(?:[^{}]|\{[^{}]*\})*\}/g, 'X');
  return /[a-z]{2,},? [a-z]/.test(plain) || /X [a-z]{2,}|[a-z]{2,} X/.test(plain);
}

/** Literals of a source file that are sentences for people, but for those that have a reason to stay. */
export function sentencesIn(text: string): string[] {
  const code = withoutComments(text).replace(/^import[\s\S]*?;\n/gm, '');
  return [...code.matchAll(LITERAL)]
    .filter((found) => {
      const line = code.slice(code.lastIndexOf('\n', found.index - 1) + 1, found.index);
      const before = code.slice(Math.max(0, found.index - 60), found.index);
      const excused = reasoned.some(([, at]) => at.test(line) || at.test(before));
      return !excused && isSentence(found[1] ?? found[2] ?? found[3] ?? '');
    })
    .map(([literal]) => literal);
}
