import type { Plan } from '../../plan/plan';
import type { Words } from '../../words/words';
import { section } from '../document/block';
import { htmlPage } from '../document/html-page';
import { markdownToHtml } from '../document/markdown-to-html';
import { blocksToHtml, escapeHtml } from '../document/to-html';
import { picturesOf } from '../pictures/of-plan/pictures-of';
import { sheetSection } from '../sheets/sheet-to-html';
import { isFamilys, sheetsOf } from '../sheets/sheets-of';
import { detailsMarkdown } from './to-markdown';

/** The household's own file: its sheets, the pictures and the details in one page without script or network. */
export function planHtml(plan: Plan, words: Words): string {
  const sheets = sheetsOf(plan, words).filter(isFamilys);
  const pictures =
    sheets.length === 0 ? [] : [...picturesOf(plan, words)].filter(([id]) => id !== 'year');
  const details = markdownToHtml(detailsMarkdown(plan, words));
  const links = [
    ...sheets.map(({ id, title }) => [id, title] as const),
    ...(pictures.length > 0 ? [['pictures', words.sheets.html.pictures] as const] : []),
    ['details', words.sheets.html.details] as const,
  ];
  const body = `<header><h1>${escapeHtml(words.sheets.html.title(plan.name))}</h1></header>
<nav aria-label="${escapeHtml(words.sheets.html.contents)}"><ul>${links.map(([id, name]) => `<li><a href="#${id}">${escapeHtml(name)}</a></li>`).join('')}</ul></nav>
<main>
${sheets.map(sheetSection).join('\n')}
${
  pictures.length === 0
    ? ''
    : `<section class="sheet" id="pictures" aria-labelledby="pictures-name">
<h2 id="pictures-name">${escapeHtml(words.sheets.html.pictures)}</h2>
${blocksToHtml(pictures.flatMap(([, picture]) => section(picture.drawing.title, { kind: 'picture', picture }, { kind: 'say', text: picture.drawing.description })))}
</section>`
}
<section class="sheet details" id="details" aria-labelledby="details-name">
<h2 id="details-name">${escapeHtml(words.sheets.html.details)}</h2>
${details}
</section>
</main>`;
  return htmlPage({ title: words.sheets.html.title(plan.name), language: words.language, body });
}
