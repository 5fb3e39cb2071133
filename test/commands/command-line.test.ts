import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { COMMANDS, commandRow, optionsOf, optionTable } from '../../src/commands/command-table';
import { bashCompletion } from '../../src/commands/completion/bash';
import { fishCompletion } from '../../src/commands/completion/fish';
import { zshCompletion } from '../../src/commands/completion/zsh';
import { allHelp, helpFor } from '../../src/commands/help/help-text';
import { manPage } from '../../src/commands/help/man-page';
import { readArguments } from '../../src/commands/read-arguments';
import { changes, nearWord } from '../../src/quantity/near-word';

const folder = mkdtempSync(join(tmpdir(), 'lampkeeper-shell-'));
afterAll(() => rmSync(folder, { recursive: true }));

const wrongOf = (...words: string[]) => {
  const read = readArguments(words);
  return 'wrong' in read ? read.wrong : null;
};

test('every command has help of its own, with each of its options and an example that is read', () => {
  for (const name of COMMANDS) {
    const help = helpFor(name);
    expect(allHelp()).toContain(`\n  ${name}`);
    for (const option of commandRow(name).options) expect(help).toContain(`--${option}`);
    expect(commandRow(name).examples.length).toBeGreaterThan(0);
    for (const [call] of commandRow(name).examples) {
      expect(help).toContain(`lampkeeper ${call}`.trim());
      const words = call
        .replace(/ [<>].*/, '')
        .split(' ')
        .filter(Boolean);
      const wrong = wrongOf(...words.map((word) => (word === 'kim' ? 'kim.yaml' : word)));
      expect(wrong, call).toBeNull();
    }
  }
});

test('no line of help is wider than a terminal', () => {
  const wide = [allHelp(), ...COMMANDS.map(helpFor)]
    .flatMap((help) => help.split('\n'))
    .filter((line) => line.length > 80 && !line.startsWith('  lampkeeper completion'));
  expect(wide).toEqual([]);
});

test('help and version are words too, and --help goes with any command', () => {
  expect(readArguments(['help', 'plan'])).toMatchObject({ command: 'help', rest: ['plan'] });
  expect(readArguments(['version'])).toMatchObject({ command: 'version' });
  expect(readArguments(['plan', '--help'])).toMatchObject({ command: 'plan', help: true });
  expect(readArguments(['-h'])).toMatchObject({ commandTyped: false, help: true });
});

test('an option goes with its commands and with no other', () => {
  for (const name of COMMANDS) {
    for (const [option, { value }] of Object.entries(optionTable)) {
      const words = [name, `--${option}`, ...(value === null ? [] : ['2026-11-25'])];
      const belongs = (optionsOf(name) as string[]).includes(option);
      expect(wrongOf(...words) === null, words.join(' ')).toBe(belongs);
    }
  }
  expect(wrongOf('schema', 'home', '--force')).toBe(
    '--force does not go with "schema"; it goes with interview and plan. Try: lampkeeper help schema',
  );
});

test.each([
  [['plan', '--jsno'], 'There is no option --jsno. Did you mean --json?'],
  [['plan', '--out'], '--out takes a DIR.'],
  [['plan', '--out', '--json'], '--out takes a DIR.'],
  [['plan', '--json=yes'], '--json takes no value.'],
  [['paln', 'kim.yaml'], 'Did you mean "plan"?'],
  [['chekc'], 'Did you mean "check"?'],
  [['-x'], 'There is no option -x.'],
  [['-'], 'From standard input: lampkeeper plan -'],
])('%s is told what was meant', (words, says) => {
  expect(wrongOf(...words)).toContain(says);
});

test('an option may have its value behind an equals sign, also one that begins with a dash', () => {
  expect(readArguments(['plan', 'k.yaml', '--out=-x'])).toMatchObject({ out: '-x' });
  expect(readArguments(['plan', 'k.yaml', '--out', '-'])).toMatchObject({ out: '-' });
});

test('words are near by letters changed, added, left out or swapped', () => {
  // The worked examples of the published algorithm: one letter wrong, missing, extra, or two swapped.
  expect([changes('plan', 'plon'), changes('plan', 'pla'), changes('plan', 'plaan')]).toEqual([
    1, 1, 1,
  ]);
  expect(changes('plan', 'paln')).toBe(1);
  expect(changes('kitten', 'sitting')).toBe(3);
  expect(nearWord('frobnicate', COMMANDS)).toBeNull();
  expect(nearWord('x', COMMANDS)).toBeNull();
});

test('completion for bash offers commands, the options of each, and homes', () => {
  const script = join(folder, 'complete.bash');
  writeFileSync(script, bashCompletion());
  writeFileSync(join(folder, 'kim.home.yaml'), '');
  const offered = (line: string[]) => {
    const words = ['lampkeeper', ...line].map((word) => `'${word}'`).join(' ');
    const ask = `source ${script}; COMP_WORDS=(${words}); COMP_CWORD=${line.length}; _lampkeeper; printf '%s\\n' "\${COMPREPLY[@]}"`;
    const ran = spawnSync('bash', ['--norc', '-c', ask], { cwd: folder, encoding: 'utf8' });
    expect(ran.stderr).toBe('');
    return ran.stdout.trim().split('\n').sort();
  };
  expect(offered(['pl'])).toEqual(['plan']);
  expect(offered(['k'])).toEqual(['kim.home.yaml']);
  expect(offered(['plan', '--o'])).toEqual(['--out']);
  expect(offered(['check', '--'])).toEqual(
    optionsOf('check')
      .map((one) => `--${one}`)
      .sort(),
  );
  expect(offered(['schema', ''])).toEqual(['home', 'plan', 'quote', 'tariff']);
  expect(offered(['completion', 'z'])).toEqual(['zsh']);
  expect(offered(['plan', '--as-of', ''])).toEqual(['']);
});

test('completion for the other shells names every command and option', () => {
  for (const script of [zshCompletion(), fishCompletion()]) {
    for (const name of COMMANDS) expect(script).toContain(name);
    for (const option of Object.keys(optionTable))
      expect(script).toMatch(new RegExp(`-(-|l )${option}\\b`));
    // Quotes come in pairs, or the shell would read on for ever.
    const plain = script.replaceAll("'\\''", '').replaceAll("\\'", '').replaceAll('\\\\', '');
    expect(plain.match(/'/g)!.length % 2).toBe(0);
  }
});

test('the manual page is read by the formatter without a complaint, and holds every option', () => {
  const page = manPage();
  for (const name of COMMANDS) expect(page).toContain(`.SS ${name}`);
  const groff = spawnSync('groff', ['-man', '-Tascii', '-ww', '-z'], {
    input: page,
    encoding: 'utf8',
  });
  if (groff.error) return;
  expect(groff.stderr).toBe('');
});
