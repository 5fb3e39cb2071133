import { describe, expect, test } from 'vitest';
import { Reader } from './small-plan';

const window = { columns: 80, rows: 24 };

describe('a key over the plan', () => {
  test('N asks before it leads to the homes of the folder, and only Y goes there', () => {
    expect(new Reader(window).type('n').text()).toMatch(/go to the homes of this folder\?/);
    expect(new Reader(window).type('ny').left).toBe('homes');
    for (const back of ['n', ' ', 'x']) {
      const reader = new Reader(window).type(`n${back}`);
      expect([reader.left, reader.state.view]).toEqual([null, 'read']);
    }
    for (const name of ['enter', 'escape', 'down'] as const) {
      expect(new Reader(window).type('n').key(name).left).toBeNull();
    }
  });

  test('a paste that holds letters does nothing', () => {
    const reader = new Reader(window).press({ name: 'text', text: 'n', pasted: true });
    expect(reader.state.view).toBe('read');
  });

  test('thirty Enters or thirty Escs leave nothing and lose nothing', () => {
    expect(new Reader(window).key('enter', 30).left).toBeNull();
    expect(new Reader(window).key('escape', 30).left).toBeNull();
    expect(new Reader(window).type('qqqqqq').left).toBeNull();
  });

  test('Esc on the front page asks, Y leaves; Ctrl+S and Ctrl+C leave at once, wherever one is', () => {
    const asked = new Reader(window).key('escape');
    expect(asked.text()).toMatch(/Leave this plan\? It stays in its files\./);
    expect(asked.type('y').left).toBe('done');
    for (const name of ['ctrl-s', 'ctrl-c'] as const) {
      expect(new Reader(window).key(name).left).toBe('done');
      expect(new Reader(window).key('enter').key(name).left).toBe('done');
      expect(new Reader(window).type('/lamp').key(name).left).toBe('done');
    }
  });
});

describe('the sections of the plan', () => {
  test('Enter lists them, Enter opens one, Esc goes back to the list and then to the front page', () => {
    const reader = new Reader(window);
    expect(reader.lines()[0]).toBe('Front page: plan for oak-house');
    reader.key('enter');
    expect(reader.text()).toContain('> 1. Front page');
    expect(reader.text()).toContain('  6. How sure');
    reader.key('down', 3).key('enter');
    expect(reader.lines()[0]).toBe('Cautions: plan for oak-house');
    expect(reader.text()).toContain('Keep the generator outdoors.');
    reader.key('escape');
    expect(reader.text()).toContain('> 4. Cautions');
    reader.key('escape');
    expect(reader.lines()[0]).toBe('Front page: plan for oak-house');
  });

  test('a number marks a section, one that is not there is said', () => {
    const reader = new Reader(window).key('enter').type('5').key('enter');
    expect(reader.lines()[0]).toBe('Next steps: plan for oak-house');
    expect(new Reader(window).key('enter').type('9').text()).toContain('has the number 9');
  });

  test('also a short last section stands at the top when it is opened', () => {
    const reader = new Reader(window).key('enter').key('end').key('enter');
    expect(reader.lines()[0]).toBe('How sure: plan for oak-house');
    expect(reader.lines()[2]).toContain('How sure');
  });

  test('Left and Right go from section to section, Left first to the head of what is read', () => {
    const reader = new Reader(window).key('right', 2);
    expect(reader.lines()[0]).toBe('What it carries: plan for oak-house');
    reader.key('down', 3).key('left');
    expect(reader.lines()[0]).toBe('What it carries: plan for oak-house');
    reader.key('left');
    expect(reader.lines()[0]).toBe('The job: plan for oak-house');
  });

  test('whoever only looks at the list goes on where they read', () => {
    const reader = new Reader(window).key('right', 2).key('down', 4);
    const before = reader.text();
    expect(reader.key('enter').key('enter').text()).toBe(before);
  });

  test('from 120 columns on they stand beside the text', () => {
    const reader = new Reader({ columns: 120, rows: 40 }).key('right', 2);
    expect(reader.text()).toMatch(/│ > 3\. What it carries/);
    expect(reader.text()).toContain('Refrigerator');
    expect(new Reader({ columns: 119, rows: 40 }).text()).not.toContain('3. What it carries');
  });
});

describe('finding a word', () => {
  test('the first hit from here on, the next and the one before, round the ends', () => {
    const reader = new Reader(window).type('/generator').key('enter');
    expect(reader.text()).toContain('Hit 1 of 1 for "generator"');
    expect(reader.text()).toContain('Keep the generator outdoors.');
    reader.key('escape').type('/sentence 7').key('enter');
    expect(reader.text()).toMatch(/Hit \d of 5 for "sentence 7"/);
    const at = () => Number(/Hit (\d)/.exec(reader.text())![1]);
    const first = at();
    reader.key('right');
    expect(at()).toBe((first % 5) + 1);
    reader.key('left');
    expect(at()).toBe(first);
    expect(reader.key('right', 5) && at()).toBe(first);
  });

  test('two words are found across the end of a line, small or capital', () => {
    for (const columns of [30, 40, 63, 80]) {
      const reader = new Reader({ columns, rows: 24 }).type('/TRANSFER EQUIPMENT').key('enter');
      expect(reader.text()).toContain('Hit 1 of 1');
      expect(reader.text().replace(/\s+/g, ' ')).toContain('transfer equipment');
    }
  });

  test('what is nowhere is said, and the text stays; signs of a pattern are letters like any other', () => {
    const reader = new Reader(window).type('/zebra').key('enter');
    expect(reader.text()).toContain('"zebra" is nowhere in this plan.');
    expect(reader.text()).toContain('Find: [ zebra');
    expect(new Reader(window).type('/.*').key('enter').text()).toContain('".*" is nowhere');
    for (const text of ['3-way', 'and/or', 'a\\b', '$5 (or so)', '[x]']) {
      const found = new Reader(window).type(`/${text}`).key('enter').text();
      expect(found).toContain(`"${text}" is nowhere`);
    }
    expect(new Reader(window).type('/').key('enter').text()).toContain('Type a word to find');
  });

  test('N typed into it is a letter', () => {
    expect(new Reader(window).type('/n').state.view).toBe('find');
  });
});

describe('resizing', () => {
  test('keeps the passage, and coming back stands where it stood', () => {
    for (const start of [0, 5, 17, 40, 60]) {
      const reader = new Reader(window).key('down', start);
      const before = reader.text();
      const passage = reader.state.passage;
      for (const [columns, rows] of [
        [40, 24],
        [30, 10],
        [120, 40],
        [200, 60],
        [80, 24],
      ] as const) {
        reader.size = { columns, rows };
        reader.frame();
        expect(reader.state.passage).toEqual(passage);
      }
      expect(reader.text()).toBe(before);
    }
  });

  test('the first words in sight are in sight at every width', () => {
    const reader = new Reader(window).key('right', 4).key('down', 9);
    const words = reader.lines()[2]!.trim().split(/\s+/).slice(1, 4).join(' ');
    for (const columns of [30, 40, 99, 120, 200]) {
      reader.size = { columns, rows: 24 };
      const near = reader
        .lines()
        .slice(0, 6)
        .join(' ')
        .replace(/│.*?(?=\s\s|$)/g, '');
      expect(near.replace(/\s+/g, ' ')).toContain(words.split(' ')[0]);
    }
  });
});

describe.each([
  [30, 10],
  [40, 24],
  [80, 24],
  [120, 40],
  [200, 60],
])('at %i x %i', (columns, rows) => {
  const views = () => [
    new Reader({ columns, rows }),
    new Reader({ columns, rows }).key('end'),
    new Reader({ columns, rows }).key('enter'),
    new Reader({ columns, rows }).key('enter').key('end'),
    new Reader({ columns, rows }).type('/'),
    new Reader({ columns, rows }).type('/zebra').key('enter'),
    new Reader({ columns, rows }).type('/lamp').key('enter'),
    new Reader({ columns, rows }).type('?'),
    new Reader({ columns, rows }).type('n'),
    new Reader({ columns, rows }).type('q'),
  ];

  test('no view is wider or taller than the window, each has its title and a way out in whole words', () => {
    for (const reader of views()) {
      const lines = reader.lines();
      expect(lines.length).toBeLessThanOrEqual(rows - 2);
      expect(Math.max(...lines.map((line) => [...line].length))).toBeLessThanOrEqual(columns);
      expect(lines[0]).not.toBe('');
      expect(lines.at(-1)).toMatch(/Esc leave$|Esc back$|Esc front page$|back to it$|key back$/);
    }
  });

  test('the keys stay where they are while one reads on', () => {
    const reader = new Reader({ columns, rows }).key('right');
    const foot = reader.lines().length;
    for (let i = 0; i < 12; i += 1) {
      expect(reader.press({ name: 'text', text: ' ' }).lines().length).toBe(foot);
    }
  });
});

test('all keys can be read in the least window, and a key that scrolls does not leave them', () => {
  for (const [columns, rows] of [
    [30, 10],
    [40, 24],
    [80, 24],
  ] as const) {
    const reader = new Reader({ columns, rows }).type('?');
    let seen = '';
    for (let i = 0; i < 40; i += 1) {
      seen += ` ${reader.lines().slice(1).join(' ')}`;
      reader.key('down');
    }
    expect(reader.state.view).toBe('keys');
    expect(seen.replace(/\s+/g, ' ')).toContain('Up and Down: a line on or back');
    expect(seen).toContain('Ctrl+S or Ctrl+C');
    expect(reader.type('x').state.view).toBe('read');
  }
});

test('a key of a view of its own stands at the foot and among all keys', () => {
  const beside = [{ letter: 'e', says: 'explain a figure' }];
  const reader = new Reader({ columns: 80, rows: 24 }, undefined, beside);
  expect(reader.text()).toContain('E explain a figure');
  expect(reader.type('?').text()).toContain('E: explain a figure');
});
