import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { furnaceOnly, lightsOnly } from '../fixtures/quick-homes';
import { runHere } from './run-here';
import { runProgram } from './run-program';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'lampkeeper-papers-'));
  writeFileSync(join(folder, 'kim.home.yaml'), furnaceOnly('kim'));
  writeFileSync(join(folder, 'thin.home.yaml'), lightsOnly('thin'));
});
afterAll(() => rmSync(folder, { recursive: true }));

/** A command carried out in the folder of the home. */
const run = (...args: string[]) => runHere(folder, args);

const read = (...path: string[]) => readFileSync(join(folder, ...path), 'utf8');

describe('the commands on a home file', () => {
  it('print a plan, leave the home file alone, and write the papers of the same plan, to the byte', async () => {
    const before = read('kim.home.yaml');
    // The built program; what is written from here on must be the same to the byte.
    const printed = runProgram(folder, ['plan', 'kim.home.yaml']);
    expect(printed).toMatchObject({ code: 0, err: '' });
    expect(printed.out).toContain('# Backup power plan: kim');
    expect(read('kim.home.yaml')).toBe(before);
    expect(readdirSync(folder).sort()).toEqual(['kim.home.yaml', 'thin.home.yaml']);
    expect((await run('plan', 'kim.home.yaml', '--out', 'papers')).code).toBe(0);
    expect(readdirSync(join(folder, 'papers')).sort()).toEqual([
      'kim.inspector.html',
      'kim.insurer.html',
      'kim.plan.html',
      'kim.plan.md',
      'kim.plan.yaml',
      'kim.quote.html',
      'kim.utility.html',
      'kim.year.ics',
    ]);
    const body = read('papers', 'kim.plan.md').split('\n<!-- ')[0]!;
    expect(body.trimEnd()).toBe(printed.out.trimEnd());
  });

  it('write the data that they print, nothing over what somebody changed until forced, and then the same bytes again', async () => {
    expect((await run('plan', 'thin.home.yaml', '--out', 'papers')).code).toBe(0);
    const data = JSON.parse((await run('plan', 'thin.home.yaml', '--json')).out);
    expect(parse(read('papers', 'thin.plan.yaml'))).toEqual(data);
    const papers = () => [read('papers', 'thin.plan.md'), read('papers', 'thin.plan.yaml')];
    const before = papers();
    const mine = `${before[1]}# my note\n`;
    writeFileSync(join(folder, 'papers', 'thin.plan.yaml'), mine);
    const refused = await run('plan', 'thin.home.yaml', '--out', 'papers');
    expect(refused).toMatchObject({ code: 1, err: expect.stringContaining('--force') });
    expect(papers()).toEqual([before[0], mine]);
    expect((await run('plan', 'thin.home.yaml', '--out', 'papers', '--force')).code).toBe(0);
    expect(papers()).toEqual(before);
  });

  it('count ages of figures from the day asked for', async () => {
    const later = JSON.parse(
      (await run('plan', 'thin.home.yaml', '--as-of', '2031-06-01', '--json')).out,
    );
    expect(later.asOf).toBe('2031-06-01');
    expect(await run('plan', 'kim.home.yaml', '--as-of', 'June')).toMatchObject({
      code: 2,
      err: expect.stringContaining('2026-11-25'),
    });
  });

  it('check a file and say line, column and what to do', async () => {
    expect((await run('check', 'kim.home.yaml')).code).toBe(0);
    const broken = read('kim.home.yaml').replace(/^( *people-count:.*)$/m, '  people-count: many');
    expect(broken).toContain('people-count: many');
    writeFileSync(join(folder, 'broken.home.yaml'), broken);
    const checked = await run('check', 'broken.home.yaml');
    const line = broken.split('\n').findIndex((text) => text.includes('people-count: many')) + 1;
    expect(checked.code).toBe(1);
    expect(checked.out).toMatch(new RegExp(`^broken\\.home\\.yaml:${line}:\\d+: `));
    const refused = await run('plan', 'broken.home.yaml');
    expect(refused).toMatchObject({ code: 1, out: '', err: checked.out });
    rmSync(join(folder, 'broken.home.yaml'));
  });

  it('tell a missing file from a wrong call', async () => {
    const missing = { code: 1, err: expect.stringContaining('Check the name') };
    expect(await run('plan', 'nobody.home.yaml')).toMatchObject(missing);
    expect(runProgram(folder, ['plan', 'nobody.home.yaml'])).toMatchObject(missing);
    expect(runProgram(folder, ['brew'])).toMatchObject({ code: 2, out: '' });
    for (const wrong of [['plan'], ['check'], ['schema', 'house'], ['--no-such'], ['brew']]) {
      const { code, out, err } = await run(...wrong);
      expect({ wrong, code, out }).toEqual({ wrong, code: 2, out: '' });
      expect(err).toMatch(/lampkeeper /);
    }
  });

  it('print the form of the two files', async () => {
    const home = JSON.parse((await run('schema', 'home')).out);
    expect(JSON.stringify(home)).toContain('people-count');
    expect(JSON.parse((await run('schema', 'plan')).out)).toHaveProperty('$schema');
  });

  it('ask line by line where there is no terminal, keep what was answered, leave no file of a name that was taken back, and keep a named file by its name', async () => {
    const asked = runProgram(folder, [], '9\nfamily-name\nback\nblue-house\n3\n');
    expect(asked.out).toContain('Is anyone at home more at risk');
    expect(asked.err).toContain('blue-house.home.yaml');
    expect(read('blue-house.home.yaml')).toContain('now-danger');
    expect((await run('check', 'blue-house.home.yaml')).code).toBe(0);
    expect(readdirSync(folder)).toContain('blue-house.home.yaml');
    expect(readdirSync(folder)).not.toContain('family-name.home.yaml');
    const again = runProgram(folder, ['blue-house.home.yaml'], '9\ndraft\n2\nred-house\nstop\n');
    expect(again.out).toContain('This home is named after its file, blue-house.home.yaml.');
    expect(read('blue-house.home.yaml')).toContain('home-name: blue-house');
  });
});
