import { planIcs } from '../papers/calendar/to-ics';
import { planHtml } from '../papers/household/to-html';
import { planMarkdown } from '../papers/household/to-markdown';
import { planYaml } from '../papers/plan-file/to-yaml';
import { sheetPage } from '../papers/sheets/sheet-to-html';
import { isFamilys, sheetsOf } from '../papers/sheets/sheets-of';
import type { Plan } from '../plan/plan';
import type { Paper } from '../store/write-papers';
import type { Words } from '../words/words';

const remark = (text: string) => `<!-- ${text} -->`;

/**
 * The papers of a plan: as data, as a plain-language summary, as a page to print with the household's sheets; the
 * sheets for others each in a file of its own, so that none of them travels with what is private; and the calendar.
 */
export function planPapers(plan: Plan, name: string, words: Words): Paper[] {
  const others = sheetsOf(plan, words).filter((sheet) => !isFamilys(sheet));
  return [
    { file: `${name}.plan.yaml`, text: planYaml(plan, words), comment: (text) => `# ${text}` },
    { file: `${name}.plan.md`, text: planMarkdown(plan, words), comment: remark },
    { file: `${name}.plan.html`, text: planHtml(plan, words), comment: remark },
    ...others.map((sheet) => ({
      file: `${name}.${sheet.id}.html`,
      text: sheetPage(sheet, words),
      comment: remark,
    })),
    ...(plan.undecided.length > 0 ? [] : [calendar(plan, name, words)]),
  ];
}

/** In a calendar the line that lets us know it again is a property of its own, before its events. */
function calendar(plan: Plan, name: string, words: Words): Paper {
  return {
    file: `${name}.year.ics`,
    text: planIcs(plan, words),
    comment: (text) => `X-LAMPKEEPER-NOTE:${text.replaceAll(';', '\\;')}`,
    commentAfter: 'CALSCALE:GREGORIAN',
    crLf: true,
  };
}
