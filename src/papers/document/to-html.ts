import { visible } from '../../quantity/visible';
import { toSvg } from '../pictures/to-svg';
import type { Block } from './block';

/** Blocks as HTML: no script, no style of its own, every text escaped. */
export function blocksToHtml(blocks: readonly Block[], headingLevel: 2 | 3 = 3): string {
  return blocks.map((block) => element(block, headingLevel)).join('\n');
}

function element(block: Block, level: number): string {
  switch (block.kind) {
    case 'heading':
      return `<h${level}>${escapeHtml(block.text)}</h${level}>`;
    case 'say':
      return block.strong
        ? `<p><strong>${escapeHtml(block.text)}</strong></p>`
        : `<p>${escapeHtml(block.text)}</p>`;
    case 'bullets':
      return `<ul>${items(block.items)}</ul>`;
    case 'steps':
      return `<ol${block.boxes ? ' class="boxes"' : ''}>${items(block.items)}</ol>`;
    case 'boxes':
      return `<ul class="boxes">${items(block.items)}</ul>`;
    case 'blanks':
      return `<dl class="blanks">${block.names.map((name) => `<div><dt>${escapeHtml(name)}</dt><dd>&nbsp;</dd></div>`).join('')}</dl>`;
    case 'table':
      return table(block);
    case 'picture':
      return `<figure>${toSvg(block.picture.drawing)}</figure>`;
  }
}

const items = (all: readonly string[]) =>
  all.map((item) => `<li>${escapeHtml(item)}</li>`).join('');

function table({
  head,
  rows,
}: {
  head: readonly string[];
  rows: readonly (readonly string[])[];
}): string {
  const first = head.map((cell) => `<th scope="col">${escapeHtml(cell)}</th>`).join('');
  const body = rows
    .map(
      ([name = '', ...cells]) =>
        `<tr><th scope="row">${escapeHtml(name)}</th>${cells.map((cell) => `<td>${escapeHtml(cell)}</td>`).join('')}</tr>`,
    )
    .join('');
  return `<table><thead><tr>${first}</tr></thead><tbody>${body}</tbody></table>`;
}

export function escapeHtml(text: string): string {
  return visible(text)
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;');
}
