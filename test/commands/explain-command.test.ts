import { afterEach, expect, test, vi } from 'vitest';
import { WRONG_USAGE } from '../../src/commands/exit-codes';
import { explainCommand } from '../../src/commands/explain-command';
import { readArguments } from '../../src/commands/read-arguments';

afterEach(() => vi.restoreAllMocks());

async function said(...words: string[]) {
  let text = '';
  vi.spyOn(process.stderr, 'write').mockImplementation((piece) => {
    text += piece;
    return true;
  });
  const args = readArguments(['explain', ...words]);
  if ('wrong' in args) throw new Error(args.wrong);
  return { code: await explainCommand(args), text };
}

test('a figure that is none is told what was meant, before any plan is made', async () => {
  const { code, text } = await said('kim.home.yaml', 'prise');
  expect(code).toBe(WRONG_USAGE);
  expect(text).toMatch(/no figure "prise"\. Did you mean "price"\? There are: running-power, /);
});

test('it takes one home and one figure', async () => {
  expect(await said()).toMatchObject({ code: WRONG_USAGE });
  expect(await said('kim.home.yaml', 'price', 'odds')).toMatchObject({ code: WRONG_USAGE });
});
