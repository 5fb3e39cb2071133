import { PassThrough } from 'node:stream';
import { expect, test } from 'vitest';
import { type HomeHere, homesList, streetsList } from '../../src/faces/home-choice';
import { chooseHomeByLine } from '../../src/faces/lines/choose-home';
import { glyphsFor } from '../../src/faces/screen/glyphs';
import { homesFrame, homesHelpFrame } from '../../src/faces/screen/homes-frame';

const home = (name: string, changedAt: number, street: readonly string[]): HomeHere => ({
  ...{ name, file: `${name}.home.yaml`, answered: 12, toFirstPlan: 0 },
  ...{ isWhole: false, hasPlan: false, street, changedAt },
});
const place = ['ZIP code', 'what power costs'];
const homes = [
  home('elm', 1, place),
  home('oak', 3, place),
  home('fir', 2, []),
  home('ash', 2, place),
];

test('with several homes one chooses on whose street the new one stands', () => {
  const { labels, lines } = homesList(homes);
  expect(lines.at(-1)).toEqual({ way: 'which-street' });
  expect(labels.at(-1)).toContain('choose which');
  const streets = streetsList(homes);
  expect(streets.lines).toEqual(
    ['oak', 'ash', 'elm'].map((name) => ({ way: 'new', like: `${name}.home.yaml` })),
  );
  expect(streets.labels[2]).toBe('elm: it takes over ZIP code and what power costs');
});

test('with one there is nothing to choose, and with none no street', () => {
  expect(homesList(homes.slice(0, 1)).lines.at(-1)).toEqual({ way: 'new', like: 'elm.home.yaml' });
  expect(homesList([home('fir', 2, [])]).lines.at(-1)).toEqual({ way: 'new', like: null });
});

async function byLine(typed: string) {
  const [stdin, stdout] = [new PassThrough(), new PassThrough()];
  stdin.end(typed);
  const choice = await chooseHomeByLine({
    homes,
    stdin: stdin as unknown as NodeJS.ReadStream,
    stdout: stdout as unknown as NodeJS.WriteStream,
  });
  return { choice, said: String(stdout.read()) };
}

test('line by line the street is chosen too, help says what the list is for, and back leads back', async () => {
  const { choice, said } = await byLine('help\n6\nback\n6\n3\n');
  expect(choice).toEqual({ way: 'new', like: 'elm.home.yaml' });
  expect(said).toContain('nothing about the people');
  expect(said.match(/On the street of which home:/g)).toHaveLength(2);
  expect((await byLine('elm\n')).choice).toEqual({ way: 'go-on', file: 'elm.home.yaml' });
});

test('on the screen the list names its help, and the help its way back', () => {
  const glyphs = glyphsFor({ LANG: 'C.UTF-8' });
  const size = { columns: 80, rows: 24 };
  const text = (frame: { lines: readonly (readonly { text: string }[])[] }) =>
    frame.lines.map((line) => line.map((span) => span.text).join('')).join('\n');
  const shown = { isFirst: false, row: 0, error: null, keys: [], size, glyphs };
  const streets = text(homesFrame({ ...streetsList(homes), ...shown }));
  for (const key of ['? help', 'Esc back']) expect(streets).toContain(key);
  expect(text(homesHelpFrame(size, glyphs))).toMatch(/nothing about\s+the people[\s\S]*Esc back/);
});
