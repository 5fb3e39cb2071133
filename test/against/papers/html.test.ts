import axe from 'axe-core';
import { HtmlValidate } from 'html-validate';
import { JSDOM } from 'jsdom';
import { beforeAll, describe, expect, test } from 'vitest';
import { planHtml } from '../../../src/papers/household/to-html';
import { sheetPage } from '../../../src/papers/sheets/sheet-to-html';
import { isFamilys, sheetsOf } from '../../../src/papers/sheets/sheets-of';
import { english } from '../../../src/words/en';
import { planOf } from '../../households/read-household';

/**
 * Outside checks of the pages: html-validate (its rules of the HTML standard and of the usual accessibility
 * recommendations) and axe-core. Colors and sizes cannot be seen in jsdom; the style sheet is black on white.
 */
const validator = new HtmlValidate({
  extends: ['html-validate:standard', 'html-validate:a11y'],
  rules: { 'no-inline-style': 'error' },
});

const pages = new Map<string, string>();

beforeAll(() => {
  for (const name of ['birch-street', 'tower-six']) {
    const plan = planOf(name);
    pages.set(`${name}.plan`, planHtml(plan, english));
    for (const sheet of sheetsOf(plan, english).filter((one) => !isFamilys(one)))
      pages.set(`${name}.${sheet.id}`, sheetPage(sheet, english));
  }
});

test('there are the household pages and those for others', () => {
  expect(pages.size).toBeGreaterThanOrEqual(6);
});

test('a validator finds no error in any page', async () => {
  for (const [name, page] of pages) {
    const { results } = await validator.validateString(page);
    const said = results.flatMap((one) =>
      one.messages.map(({ ruleId, message, line }) => `${ruleId} ${line}: ${message}`),
    );
    expect(said, name).toEqual([]);
  }
});

/** One of each make: the household's page, a form to fill in, a table to quote from. */
const looked = ['birch-street.plan', 'birch-street.quote', 'tower-six.health'];

test('an accessibility checker finds nothing wrong in a page of each make', async () => {
  for (const name of looked) {
    const page = pages.get(name)!;
    const { window } = new JSDOM(page, { runScripts: 'outside-only' });
    window.eval(axe.source);
    const found = (await window.eval(
      "axe.run(document, { rules: { 'color-contrast': { enabled: false } } })",
    )) as axe.AxeResults;
    expect(found.passes.length, name).toBeGreaterThan(5);
    expect(
      found.violations.map(({ id, nodes }: axe.Result) => `${id}: ${nodes[0]?.html}`),
      name,
    ).toEqual([]);
    window.close();
  }
});

describe('each page', () => {
  test('has no script, nothing from a network, and a policy that forbids both', () => {
    for (const [name, page] of pages) {
      expect(page, name).toContain("default-src 'none'");
      expect(page, name).not.toMatch(
        /<script|javascript:|<link|<img|<iframe|src="|url\(http|@import/i,
      );
      expect(page.replaceAll('http://www.w3.org/2000/svg', ''), name).not.toMatch(/https?:\/\//);
    }
  });

  test('is the same to the byte when it is made again', () => {
    expect(planHtml(planOf('tower-six'), english)).toBe(pages.get('tower-six.plan'));
  });
});

test('what somebody typed never becomes markup', () => {
  const plan = { ...planOf('tower-six'), name: '<b>"oak"</b><script>alert(1)</script>' };
  const page = planHtml(plan, english);
  expect(page).not.toMatch(/<script|<b>/);
});
