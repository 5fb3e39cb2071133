import { describe, expect, test } from 'vitest';
import { traitsOf } from '../../../src/kinds/route-traits';
import type { Block } from '../../../src/papers/document/block';
import type { SheetId } from '../../../src/papers/sheets/sheet';
import { sheetPage } from '../../../src/papers/sheets/sheet-to-html';
import { sheetToMarkdown } from '../../../src/papers/sheets/sheet-to-markdown';
import { isFamilys, sheetsOf } from '../../../src/papers/sheets/sheets-of';
import type { LifeFirst } from '../../../src/plan/life-first';
import { handSteps } from '../../../src/plan/on-the-day/hand-steps';
import type { Plan } from '../../../src/plan/plan';
import type { NextStep } from '../../../src/plan/steps/next-step';
import { english } from '../../../src/words/en';
import { planOf } from '../../households/read-household';

const PAGE_LINES = 54;
/** Lines of those that run on: what one page in two columns holds, seen in a browser at letter and A4. */
const mostLines: Partial<Record<SheetId, number>> = {
  quote: 56,
};
const demos = ['birch-street', 'mill-lane', 'ridge-road', 'tower-six'] as const;

describe.each(demos)('the sheets of %s', (name) => {
  const sheets = () => sheetsOf(planOf(name), english);

  test('are lines of at most 80 columns, without an empty table, list or picture', () => {
    for (const sheet of sheets()) {
      const markdown = sheetToMarkdown(sheet);
      for (const line of markdown.split('\n'))
        expect(line.length, `${sheet.id}: ${line}`).toBeLessThanOrEqual(80);
      expect(markdown).not.toMatch(/undefined|NaN|\[object/);
      for (const block of sheet.blocks) {
        if ('items' in block) expect(block.items.length, sheet.id).toBeGreaterThan(0);
        if ('rows' in block) expect(block.rows.length, sheet.id).toBeGreaterThan(0);
        if ('names' in block) expect(block.names.length, sheet.id).toBeGreaterThan(0);
      }
    }
  });

  test('fit a page each; where two are needed, the first holds what kills, when to leave and what was decided', () => {
    for (const sheet of sheets()) {
      const lines = sheetToMarkdown(sheet).split('\n');
      const page = lines.slice(0, PAGE_LINES).join('\n');
      if (sheet.id === 'fridge') {
        expect(page).toContain(english.sheets.fridge.kills);
        expect(page).toContain(english.sheets.fridge.leave);
        expect(page).toContain(english.sheets.fridge.start);
      }
      if (sheet.id === 'family') expect(page).toContain(english.sheets.family.steps);
      expect(lines.length, sheet.id).toBeLessThanOrEqual(mostLines[sheet.id] ?? PAGE_LINES);
    }
  });

  test('say nothing twice on one sheet', () => {
    for (const sheet of sheets()) {
      const said = sheet.blocks.flatMap(textsOf);
      const more = said.filter((text, i) => said.indexOf(text) !== i);
      expect(
        more.filter((text) => !repeated.has(text)),
        sheet.id,
      ).toEqual([]);
    }
  });

  test('the fridge sheet prints no range', () => {
    const fridge = sheets().find(({ id }) => id === 'fridge')!;
    const said = fridge.blocks.flatMap(textsOf);
    for (const text of said)
      expect(text).not.toMatch(/\d[\d.,]* to \d[\d.,]*(?! °F)\b(?! °F)|\(\$/);
  });
});

function textsOf(block: Block): string[] {
  if (block.kind === 'say') return [block.text];
  return 'items' in block ? [...block.items] : [];
}

/** Steps that stand in the way there and in the way back. */
const repeated = new Set<string>([
  english.sheets.handSteps['branches-off'],
  english.sheets.handSteps['read-display'],
]);

describe('the family reads', () => {
  const plan = planOf('birch-street');
  const family = sheetsOf(plan, english).find(({ id }) => id === 'family')!;
  const said = family.blocks.flatMap(textsOf);
  const starting = (words: string) => said.filter((text) => text.startsWith(words));

  test('one purchase, the next cheaper and the next better, a line each', () => {
    const { list, advised } = plan.advice;
    const at = advised!;
    expect(starting('What to buy:')).toHaveLength(1);
    const price = (usd: number) => `$${usd.toLocaleString('en-US')}:`;
    const cheaper = list.filter(({ usd }) => usd < 0.9 * list[at]!.usd).at(-1)!;
    expect(starting('Next cheaper,')[0]).toContain(price(cheaper.usd));
    expect(starting('Next better,')[0]).toContain(price(list[at + 1]!.usd));
    expect(list[at + 1]!.usd).toBeGreaterThan(list[at]!.usd);
  });

  test('each step with who and by when, and the purchase among them', () => {
    const steps = family.blocks.find((block) => block.kind === 'boxes')!;
    const items = 'items' in steps ? steps.items : [];
    expect(items.length).toBeGreaterThan(5);
    for (const item of items) expect(item).toMatch(/\(.+, (this week|before|after the steps).*\)$/);
    const at = (words: string) => items.findIndex((item) => item.includes(words));
    const { quotes, order, 'tell-insurer': tell } = english.sheets.family.shortSteps;
    expect(at(order!)).toBeGreaterThan(at(quotes!));
    expect(at(order!)).toBeGreaterThan(at(tell!));
    // The step hands over a sheet, so that sheet is there.
    const quote = sheetsOf(plan, english).find(({ id }) => id === 'quote')!;
    expect(quotes).toContain(`"${quote.title}"`);
    expect(items.some((item) => item.startsWith('Find out'))).toBe(false);
  });
});

describe('where somebody lives by a device, the family reads', () => {
  const plan = planOf('birch-street');
  const steps = (changed: Partial<Plan>) => {
    const { blocks } = sheetsOf({ ...plan, ...changed }, english).find(
      ({ id }) => id === 'family',
    )!;
    return JSON.stringify(blocks);
  };
  const rehearse: NextStep = { id: 'rehearse', lifeSupport: true, who: 'household' };
  const lists: NextStep = { id: 'on-the-lists', careful: false, who: 'utility' };

  test('on what terms a rehearsal is held, and that a list gives no power', () => {
    const said = steps({ nextSteps: [lists, rehearse] });
    expect(said).toContain('tested second source already running');
    expect(said).toContain('it does not keep the power on');
  });

  test('the hours in hand with which to leave, and whom to call where it is too late', () => {
    const first: LifeFirst = {
      told: true,
      callToday: [],
      ownBattery: { toldHours: 4, tested: false, countedHours: 2 },
      secondWays: [],
      tripHours: 1,
      tripTold: true,
      roads: 'more',
      leaveAtHours: 5,
      leaveAtOnce: true,
    };
    const line = english.sheets.nightLeaving({ code: 'device', first });
    const said = steps({ leavingPoint: [{ code: 'device', first }] });
    expect(said).toContain(JSON.stringify(line).slice(1, -1));
    const hours = english.quantity(first.leaveAtHours, 'h');
    expect(line).toContain(hours);
    expect(line).toContain('911');
    expect(english.leaving({ code: 'device', first })).toContain(hours);
  });
});

describe('the electrician reads', () => {
  const quoteOf = (name: string, changed = {}) =>
    sheetsOf(planOf(name, changed), english).find(({ id }) => id === 'quote');

  test('each circuit in a line of a table with volts, watts, start and how known', () => {
    const quote = quoteOf('birch-street')!;
    const markdown = sheetToMarkdown(quote);
    const carried = planOf('birch-street').advice.route.carries.length;
    const rows = markdown.split('\n').filter((line) => /^\| [A-Z].* \| 120 \| /.test(line));
    expect(rows).toHaveLength(carried);
    expect(rows.find((row) => row.includes('Sump pump'))).toMatch(/\d+ \(.+\) \| label \|$/);
    expect(markdown).toContain('Read by the household: main breaker 200 A');
  });

  test('only the articles that touch this home, and always permit and inspection', () => {
    const said = JSON.stringify(quoteOf('birch-street')!.blocks);
    expect(said).toContain('445');
    for (const article of ['480', '690', '625', '550.32']) expect(said).not.toContain(article);
    expect(said).toContain('A permit and an inspection are part of the work.');
  });
});

describe('what a stranger is handed', () => {
  // Words no sheet could hold by chance; the place and the road are words of the household.
  const seeded: Record<string, string | number> = { 'budget-now': 7_531, 'home-zip': '05401' };
  const plan = planOf('tower-six', seeded);
  const odd: Plan = { ...plan, name: 'quibbleworth' };

  test('holds no name, place, money or illness', () => {
    const device = plan.home.loads.filter((load) => load.restsOn.includes('medical-devices'));
    expect(device.length).toBeGreaterThan(0);
    const strangers = sheetsOf(odd, english).filter(
      (sheet) => !isFamilys(sheet) && sheet.id !== 'health',
    );
    expect(strangers.length).toBeGreaterThanOrEqual(2);
    for (const sheet of strangers) {
      const page = `${sheetToMarkdown(sheet)}\n${sheetPage(sheet, english)}`;
      for (const word of [
        'quibbleworth',
        '7,531',
        '7531',
        '05401',
        'Burlington',
        ...device.map(({ called }) => english.called(called)),
      ])
        expect(page.toLowerCase(), `${sheet.id} holds ${word}`).not.toContain(
          String(word).toLowerCase(),
        );
      expect(page, sheet.id).not.toMatch(/\$\s?\d/);
    }
  });

  test('the health sheet holds the device and no money, and stands alone', () => {
    const health = sheetsOf(odd, english).find(({ id }) => id === 'health')!;
    const page = sheetToMarkdown(health);
    expect(isFamilys(health)).toBe(false);
    expect(page).toContain('CPAP');
    expect(page).not.toMatch(/\$\s?\d|7,531|05401/);
  });
});

describe('the order of switching', () => {
  const home = planOf('birch-street').home;

  test.each(Object.entries(traitsOf))(
    '%s: at the panel no two sources are ever on together',
    (_kind, traits) => {
      const { start, back } = handSteps(traits, home);
      const comesBefore = (steps: readonly string[], one: string, other: string) => {
        const [a, b] = [steps.indexOf(one), steps.indexOf(other)];
        if (b >= 0) expect(a, `${one} before ${other}`).toBeGreaterThanOrEqual(0);
        if (b >= 0) expect(a).toBeLessThan(b);
      };
      comesBefore(start, 'main-off', 'inlet-on');
      comesBefore(start, 'branches-off', 'main-off');
      comesBefore(start, 'plate-over', 'inlet-on');
      comesBefore(start, 'start-outdoors', 'generator-breaker-on');
      comesBefore(back, 'inlet-off', 'main-on');
      comesBefore(back, 'plate-back', 'main-on');
      comesBefore(back, 'branches-off', 'inlet-off');
      if (traits.generator === 'portable') {
        comesBefore(start, 'generator-to-its-place', 'start-outdoors');
        comesBefore(start, 'alarms-work', 'start-outdoors');
        expect(start).toContain('refuel-cold');
      }
      if (traits.connection === 'nothing') expect(start).not.toContain('start-outdoors');
    },
  );
});
