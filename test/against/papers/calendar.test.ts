import ICAL from 'ical.js';
import { expect, test } from 'vitest';
import { planPapers } from '../../../src/commands/plan-papers';
import { yearTasks } from '../../../src/plan/on-the-day/year-tasks';
import { signed } from '../../../src/store/write-papers';
import { english } from '../../../src/words/en';
import { planOf } from '../../households/read-household';

const demos = ['birch-street', 'mill-lane', 'ridge-road', 'tower-six'] as const;

function calendarOf(name: (typeof demos)[number]): string {
  return signed(
    planPapers(planOf(name), 'oak', english).find(({ file }) => file === 'oak.year.ics')!,
  );
}

/** Outside check: an independent parser of RFC 5545 reads the file and works out when things fall. */
test.each(demos)('%s: a parser of the standard finds every task in its months', (name) => {
  const plan = planOf(name);
  const calendar = new ICAL.Component(ICAL.parse(calendarOf(name)));
  const events = calendar.getAllSubcomponents('vevent').map((one) => new ICAL.Event(one));
  const tasks = yearTasks(plan.home, plan.advice.route);
  expect(events.map(({ uid }) => uid.split('@')[0])).toEqual(tasks.map(({ id }) => id));
  events.forEach((event, i) => {
    expect(event.startDate.isDate).toBe(true);
    expect(event.startDate.toString() >= plan.asOf).toBe(true);
    const times = event.iterator();
    const days = Array.from({ length: tasks[i]!.months.length }, () => times.next()!);
    expect(days.map(({ month }) => month).sort((a, b) => a - b)).toEqual([...tasks[i]!.months]);
    // Every one is a first Saturday.
    for (const day of days) {
      expect(day.dayOfWeek()).toBe(ICAL.Time.SATURDAY);
      expect(day.day).toBeLessThanOrEqual(7);
    }
    expect(days[0]!.toString()).toBe(event.startDate.toString());
  });
});

test('lines are folded at 75 octets and end in CR LF, and the bytes are the same each time', () => {
  const text = calendarOf('birch-street');
  expect(text).toBe(calendarOf('birch-street'));
  for (const line of text.split('\r\n')) {
    expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
    expect(line).not.toContain('\n');
  }
});
