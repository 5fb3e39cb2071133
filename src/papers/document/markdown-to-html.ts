import { Marked } from 'marked';
import { escapeHtml } from './to-html';

/** Headings of the summary stand one level lower on the page, which has a first and a second of its own. */
const LOWER = 1;

/** Our own Markdown as HTML. Raw HTML in it is shown as text, and links and pictures lead nowhere. */
export function markdownToHtml(markdown: string): string {
  const marked = new Marked({
    async: false,
    renderer: {
      html: (raw) => escapeHtml(raw),
      link: (_href, _title, text) => text,
      image: (_href, _title, text) => escapeHtml(text),
      heading: (text, depth) => `<h${lowered(depth)}>${text}</h${lowered(depth)}>\n`,
      tablecell: (content, { header }) =>
        header ? `<th scope="col">${content}</th>\n` : `<td>${content}</td>\n`,
    },
  });
  return marked.parse(markdown) as string;
}

const lowered = (depth: number) => Math.min(6, depth + LOWER);
