import type { Words } from '../../words/words';
import { htmlPage } from '../document/html-page';
import { blocksToHtml, escapeHtml } from '../document/to-html';
import { printSize } from './print-size';
import type { Sheet } from './sheet';

/** One sheet as a section that prints on a page of its own. */
export function sheetSection(sheet: Sheet): string {
  return `<section class="sheet ${sheet.id}" id="${sheet.id}" aria-labelledby="${sheet.id}-name">
<h2 id="${sheet.id}-name">${escapeHtml(sheet.title)}</h2>
${contents(sheet, 3)}
</section>`;
}

/** A sheet that goes to somebody else: a page of its own, and nothing else on it. */
export function sheetPage(sheet: Sheet, { language }: Pick<Words, 'language'>): string {
  const body = `<main class="${sheet.id}">\n<h1>${escapeHtml(sheet.title)}</h1>\n${contents(sheet, 2)}\n</main>`;
  return htmlPage({ title: sheet.title, language, body });
}

function contents({ id, purpose, blocks }: Sheet, headingLevel: 2 | 3): string {
  const html = blocksToHtml(blocks, headingLevel);
  const size = id === 'fridge' ? printSize(html) : 'plain';
  const flow = ['flow', ...(size === 'plain' ? [] : [size])].join(' ');
  return `<p>${escapeHtml(purpose)}</p>\n<div class="${flow}">${html}</div>`;
}
