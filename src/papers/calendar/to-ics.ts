import { type YearTask, yearTasks } from '../../plan/on-the-day/year-tasks';
import type { Plan } from '../../plan/plan';
import { visibleLine } from '../../quantity/visible';
import type { Words } from '../../words/words';

/**
 * The tasks of the year as an iCalendar file (RFC 5545): whole days, on the first Saturday of their months, each year
 * again. It names nobody; the same plan gives the same bytes, for its stamp is the day of the plan. Lines end in a line
 * feed here; whoever writes the file makes it the CR LF that the standard asks for.
 */
export function planIcs(plan: Plan, words: Words): string {
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//lampkeeper//backup power//EN',
    'CALSCALE:GREGORIAN',
    ...yearTasks(plan.home, plan.advice.route).flatMap((task) => event(task, plan.asOf, words)),
    'END:VCALENDAR',
  ];
  return `${lines.map(foldedLine).join('\n')}\n`;
}

function event({ id, months }: YearTask, asOf: string, words: Words): string[] {
  const { name, does } = words.sheets.yearTasks[id];
  const start = firstSaturdayAfter(asOf, months);
  return [
    'BEGIN:VEVENT',
    `UID:${id}@lampkeeper.invalid`,
    `DTSTAMP:${asOf.replaceAll('-', '')}T000000Z`,
    `DTSTART;VALUE=DATE:${start}`,
    `RRULE:FREQ=YEARLY;BYMONTH=${months.join(',')};BYDAY=1SA`,
    `SUMMARY:${icsText(name)}`,
    `DESCRIPTION:${icsText(does)}`,
    'TRANSP:TRANSPARENT',
    'END:VEVENT',
  ];
}

/** The first of the first Saturdays of these months that is not before a day, as YYYYMMDD. */
function firstSaturdayAfter(asOf: string, months: readonly number[]): string {
  const year = Number(asOf.slice(0, 4));
  const days = [year, year + 1].flatMap((one) => months.map((month) => firstSaturday(one, month)));
  return days.sort().find((day) => day >= asOf.replaceAll('-', ''))!;
}

function firstSaturday(year: number, month: number): string {
  const weekday = new Date(Date.UTC(year, month - 1, 1)).getUTCDay();
  const day = 1 + ((6 - weekday + 7) % 7);
  return `${year}${String(month).padStart(2, '0')}${String(day).padStart(2, '0')}`;
}

/** RFC 5545 3.3.11: backslash, semicolon, comma and line ends are escaped. */
function icsText(text: string): string {
  return visibleLine(text).replace(/[\\;,]/g, (sign) => `\\${sign}`);
}

/** RFC 5545 3.1: no line longer than 75 octets; what goes on begins with a space. */
function foldedLine(line: string): string {
  const parts: string[] = [];
  let now = '';
  for (const letter of line) {
    if (Buffer.byteLength(now + letter) > (parts.length === 0 ? 75 : 74)) {
      parts.push(now);
      now = letter;
    } else now += letter;
  }
  return [...parts, now].join('\n ');
}
