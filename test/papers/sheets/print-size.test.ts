import { expect, test } from 'vitest';
import { PAGE_STYLE } from '../../../src/papers/document/page-style';
import { printSize } from '../../../src/papers/sheets/print-size';
import { sheetPage } from '../../../src/papers/sheets/sheet-to-html';
import { sheetsOf } from '../../../src/papers/sheets/sheets-of';
import { english } from '../../../src/words/en';
import { planOf } from '../../households/read-household';

const pointsOf = (of: string) =>
  Number(new RegExp(`\\.fridge \\.flow${of} \\{ font-size: ([\\d.]+)pt`).exec(PAGE_STYLE)?.[1]);

test('the less stands on the sheet for the night, the larger it is printed, and never below the plain size', () => {
  expect(printSize(`<p>${'a'.repeat(2000)}</p>`)).toBe('largest');
  expect(printSize(`<p>${'a'.repeat(2900)}</p>`)).toBe('larger');
  expect(printSize(`<p>${'a'.repeat(3300)}</p>`)).toBe('plain');
  expect(pointsOf('')).toBe(10.2);
  expect(pointsOf('.larger')).toBeGreaterThanOrEqual(11);
  expect(pointsOf('.largest')).toBeGreaterThan(pointsOf('.larger'));
});

test('demo homes are printed in large type, and only the sheet for the night is', () => {
  const classOf = (name: string, id: string) =>
    /class="(flow[^"]*)"/.exec(
      sheetPage(sheetsOf(planOf(name), english).find((sheet) => sheet.id === id)!, english),
    )?.[1];
  expect(classOf('tower-six', 'fridge')).toBe('flow largest');
  expect(classOf('ridge-road', 'fridge')).toBe('flow larger');
  expect(classOf('ridge-road', 'quote')).toBe('flow');
  expect(classOf('ridge-road', 'family')).toBe('flow');
});
