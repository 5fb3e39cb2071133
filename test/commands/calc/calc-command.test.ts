import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { calculations } from '../../../src/commands/calc/registry';
import { runCalc, workOf } from './run-calc';

const folder = mkdtempSync(join(tmpdir(), 'calc-'));
afterAll(() => rmSync(folder, { recursive: true }));

function fileOf(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

describe('without a name', () => {
  test('every computation is listed with its inputs, units and source', async () => {
    const { code, out } = await runCalc();
    expect(code).toBe(0);
    const parts = out.trim().split('\n\n');
    expect(parts).toHaveLength(Object.keys(calculations).length);
    for (const [i, [name, load]] of Object.entries(calculations).entries()) {
      const { about, inputs, source } = await load();
      expect(parts[i]).toContain(`${name}: ${about}`);
      expect(parts[i]).toContain(`Source: ${source}`);
      for (const input of inputs) {
        const line = parts[i]!.split('\n').find((l) => l.trim().startsWith(`${input.key} `))!;
        expect(line).toContain(input.about);
        const said = 'unit' in input && !['', 'count', 'year'].includes(input.unit);
        if (said) expect(line).toContain(input.unit);
        if (input.kind === 'choice') expect(line).toContain(input.choices.join(' or '));
      }
    }
  });

  test('the list is data with --json', async () => {
    const { out } = await runCalc('--json');
    const list = JSON.parse(out) as { name: string; source: string; inputs: object[] }[];
    expect(list.map((one) => one.name)).toEqual(Object.keys(calculations));
    for (const { source, inputs } of list) {
      expect(source.length).toBeGreaterThan(10);
      expect(inputs.length).toBeGreaterThan(0);
    }
  });

  test('a file alone is wrong usage', async () => {
    const { code, err } = await runCalc('--in', 'x.yaml');
    expect([code, err]).toEqual([2, '--in needs the name of a computation before it.\n']);
  });
});

test('each computation has the name it is registered under, and keys that are all different', async () => {
  for (const [name, load] of Object.entries(calculations)) {
    const calculation = await load();
    const keys = calculation.inputs.map((input) => input.key);
    expect(calculation.name).toBe(name);
    expect(new Set(keys).size).toBe(keys.length);
  }
});

test.each(Object.keys(calculations))('the example of %s works as printed', async (name) => {
  const help = await runCalc(name);
  expect(help.code).toBe(0);
  const example = /Try: lampkeeper calc (.+)/.exec(help.out)![1]!;
  // As a shell cuts it: blanks part words, but not inside quotes.
  const words = example.match(/(?:[^\s"]|"[^"]*")+/g)!.map((word) => word.replace(/"/g, ''));
  expect(words.join(' ')).toBe(example.replace(/"/g, ''));
  expect(example.replace(/"[^"]*"/g, '')).not.toMatch(/[;&|$<>()*']/);
  const { code, out, err } = await runCalc(...words);
  expect([code, err]).toEqual([0, '']);
  expect(out).toContain('Result\n');
  expect(out).toContain('Source: ');
  expect(out).not.toMatch(/NaN|Infinity|undefined|null/);
});

test('the work shows inputs as understood, what was assumed, each step, the result and the source', async () => {
  const { out } = await runCalc('cooling-power', 'capacity=3', 'tons', 'eer=12');
  expect(out).toContain('capacity = 36,000 Btu');
  expect(out).toContain('electric power = Btu/h / EER = 3,000 W');
  expect(out).toContain('Result\n  electric power while cooling: 3,000 W');
  const pump = await runCalc('pump-power', 'gpm=10 gpm', 'head=84', 'ft');
  expect(pump.out).toContain('pump-efficiency = 55% (assumed)');
});

test('--json gives name, inputs, steps, result and source', async () => {
  const work = await workOf('busbar busbar=200 main=200 position=opposite-end');
  expect(Object.keys(work)).toEqual(['name', 'inputs', 'steps', 'result', 'notes', 'source']);
  expect(work.inputs.busbar).toEqual({ value: 200, unit: 'A', given: true });
  expect(work.inputs.existing).toEqual({ value: 0, unit: 'A', given: false });
  for (const step of work.steps) {
    expect(Object.keys(step)).toEqual(['label', 'formula', 'value', 'unit']);
  }
});

describe('--in', () => {
  test('reads YAML, and what is typed wins', async () => {
    const path = fileOf('pump.yaml', 'gpm: 10\nhead: 84 ft\n');
    const { inputs } = await workOf(`pump-power gpm=12 --in ${path}`);
    expect([inputs.gpm!.value, inputs.head!.value]).toEqual([12, 84]);
  });

  test('reads JSON', async () => {
    const path = fileOf('pump.json', '{"gpm": 10, "head": "84 ft"}');
    const { inputs } = await workOf(`pump-power --in ${path}`);
    expect(inputs.head!.value).toBe(84);
  });

  test('reads loads as a mapping and as a list of lines', async () => {
    const mapping = 'cooking: { wall oven: 5 kW, cooktop: 6000 }';
    const list = 'cooking: [wall oven 5 kW, cooktop 6000]';
    const dwelling = 'method: optional\narea: 1500\n';
    const works = [];
    for (const [i, cooking] of [mapping, list].entries()) {
      const path = fileOf(`load-${i}.yaml`, dwelling + cooking);
      works.push(await workOf(`service-load --in ${path}`));
    }
    expect(works[0]!.inputs.cooking!.value).toEqual([
      { name: 'wall oven', value: 5000 },
      { name: 'cooktop', value: 6000 },
    ]);
    expect(works[1]).toEqual(works[0]);
  });

  test.each([
    ['broken.yaml', 'gpm: [1', 'broken.yaml:1:8: '],
    ['nested.yaml', `gpm: ${'['.repeat(9000)}`, 'nested.yaml:1:46: lists are nested deeper'],
    ['list.yaml', '- 1\n- 2\n', 'holds no key: value lines'],
    ['empty.yaml', '', 'holds no key: value lines'],
    ['deep.yaml', 'gpm: { a: { b: 1 } }', 'gpm has no value'],
    ['null.yaml', 'gpm:\nhead: 3', 'gpm has no value'],
    [
      'bomb.yaml',
      `a: &a [x,x,x,x]\n${'bcdefg'
        .split('')
        .map((k, i) => `${k}: &${k} [*${'abcdef'[i]},*${'abcdef'[i]},*${'abcdef'[i]}]`)
        .join('\n')}`,
      'bomb.yaml',
    ],
  ])('says what is wrong with %s, with exit 1', async (name, text, says) => {
    const { code, out, err } = await runCalc('pump-power', '--in', fileOf(name, text));
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain(says);
  });

  test.skipIf(process.platform === 'win32')(
    'refuses a device, which would be read for ever',
    async () => {
      const { code, err } = await runCalc('pump-power', '--in', '/dev/zero');
      expect(code).toBe(1);
      expect(err).toContain('a pipe or a device, not a file');
    },
  );

  test('names a file that is not there', async () => {
    const { code, err } = await runCalc('pump-power', '--in', join(folder, 'none.yaml'));
    expect(code).toBe(1);
    expect(err).toContain('none.yaml');
  });

  test('a file with an unknown key is wrong usage', async () => {
    const { code, err } = await runCalc('pump-power', '--in', fileOf('odd.yaml', 'flow: 10'));
    expect(code).toBe(2);
    expect(err).toContain('no input "flow"');
  });
});
