import { type Node, Parser } from 'commonmark';
import { expect, test } from 'vitest';
import { sheetToMarkdown } from '../../../src/papers/sheets/sheet-to-markdown';
import { sheetsOf } from '../../../src/papers/sheets/sheets-of';
import { english } from '../../../src/words/en';
import { planOf } from '../../households/read-household';

/** Outside check: the reference parser of CommonMark reads each sheet as it was meant. */
test.each(['birch-street', 'tower-six'])(
  '%s: a second reader finds the same headings and steps',
  (name) => {
    for (const sheet of sheetsOf(planOf(name), english)) {
      const seen = { headings: [] as string[], html: 0, items: 0, code: 0, marks: 0, text: '' };
      const walker = new Parser().parse(sheetToMarkdown(sheet)).walker();
      for (let step = walker.next(); step; step = walker.next()) {
        if (!step.entering) continue;
        if (step.node.type === 'heading') seen.headings.push(textOf(step.node));
        if (step.node.type === 'item') seen.items += 1;
        if (step.node.type === 'code_block') seen.code += 1;
        if (step.node.type === 'emph' || step.node.type === 'strong') seen.marks += 1;
        if (step.node.type === 'text') seen.text += step.node.literal ?? '';
        if (step.node.type.startsWith('html')) seen.html += 1;
      }
      const headings = sheet.blocks.flatMap((block) =>
        block.kind === 'heading' ? [block.text] : [],
      );
      expect(seen.headings).toEqual([sheet.title, ...headings]);
      expect(seen.html).toBe(0);
      expect(seen.code).toBe(sheet.blocks.filter(({ kind }) => kind === 'picture').length);
      const listed = sheet.blocks.flatMap((block) => ('items' in block ? [...block.items] : []));
      const ruled = sheet.blocks.flatMap((block) => ('names' in block ? [...block.names] : []));
      const strong = sheet.blocks.some((block) => block.kind === 'say' && block.strong);
      expect(seen.marks > 0, `${sheet.id}: a line to write on is no mark`).toBe(strong);
      for (const name of ruled) expect(seen.text).toContain(`${name}: __________`);
      expect(seen.items).toBeGreaterThanOrEqual(listed.length);
    }
  },
);

function textOf(node: Node): string {
  let said = '';
  const walker = node.walker();
  for (let step = walker.next(); step; step = walker.next())
    if (step.entering && step.node.type === 'text') said += step.node.literal ?? '';
  return said;
}
