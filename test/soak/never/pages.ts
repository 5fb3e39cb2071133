import { planHtml } from '../../../src/papers/household/to-html';
import { sheetPage } from '../../../src/papers/sheets/sheet-to-html';
import { sheetToMarkdown } from '../../../src/papers/sheets/sheet-to-markdown';
import { isFamilys, sheetsOf } from '../../../src/papers/sheets/sheets-of';
import { english } from '../../../src/words/en';
import type { Held } from '../seen';

/** Figures that a household acts by; each is read out of a text as it stands there. */
const FIGURES = {
  dollars: /\$\d[\d,]*(?:\.\d+)?\b/g,
  gallons: /(?<![\d.,])\d[\d,.]* gal\b/g,
  hours: /\d+ days?(?: \d+ h)?\b|(?<![\d:.,])\d+(?:\.\d+)? h\b/g,
  'stored energy': /(?<![\d.,])\d[\d,.]* kWh\b/g,
} as const;

type Said = Readonly<Record<keyof typeof FIGURES, ReadonlySet<string>>>;

function saidIn(text: string): Said {
  const flat = text.replace(/\s+/g, ' ');
  return Object.fromEntries(
    Object.entries(FIGURES).map(([what, figure]) => [what, new Set(flat.match(figure) ?? [])]),
  ) as unknown as Said;
}

/** What an HTML page says, without its marks. */
const textOf = (html: string) =>
  html
    .replace(/<style[\s\S]*?<\/style>/g, ' ')
    .replace(/<[^>]+>/g, ' ')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&');

/** The same without its drawings, whose axes have figures of their own. */
const readIn = (html: string) => textOf(html.replace(/<svg[\s\S]*?<\/svg>/g, ' '));

/** Figures that `one` says and none of the `others` does, a line each. */
function notIn(one: Said, others: readonly Said[], at: string, where: string): string[] {
  return (Object.keys(FIGURES) as (keyof Said)[]).flatMap((what) =>
    [...one[what]]
      .filter((figure) => !others.some((other) => other[what].has(figure)))
      .map((figure) => `${what}: ${at} says ${figure}, and ${where} does not`),
  );
}

/** Every dollar, gallon, hour and kilowatt-hour on a sheet stands in the summary too; what can be used of a battery, in the plan. */
export const sheetsAsSummary: Held = ({ plan, text }) => {
  const usable = english.quantity(Math.round(10 * (plan.advice.route.usableKwh ?? 0)) / 10, 'kWh');
  const summary = [saidIn(text), saidIn(usable)];
  return sheetsOf(plan, english).flatMap((sheet) =>
    notIn(saidIn(sheetToMarkdown(sheet)), summary, sheet.id, 'the summary'),
  );
};

/** A page says the figures of the text it is made from, and beside its drawings no others. */
export const pagesAsTexts: Held = ({ plan, text, front }) => {
  const sheets = sheetsOf(plan, english);
  const html = planHtml(plan, english);
  const family = sheets.filter(isFamilys).map((sheet) => saidIn(sheetToMarkdown(sheet)));
  const details = saidIn(text.slice(front.length));
  return [
    ...notIn(saidIn(readIn(html)), [saidIn(text), ...family], 'the page', 'its text'),
    ...notIn(details, [saidIn(textOf(html))], 'the details', 'the page'),
    ...sheets.flatMap((sheet) => {
      const written = saidIn(sheetToMarkdown(sheet));
      const page = sheetPage(sheet, english);
      return [
        ...notIn(written, [saidIn(textOf(page))], sheet.id, 'its page'),
        ...notIn(saidIn(readIn(page)), [written], `the page of ${sheet.id}`, 'its text'),
      ];
    }),
  ];
};
