import { describe, expect, test } from 'vitest';
import { carriedHours } from '../../../src/outage/expected-outages';
import { planMarkdown } from '../../../src/papers/household/to-markdown';
import type { Plan } from '../../../src/plan/plan';
import { english } from '../../../src/words/en';
import { planOf } from '../../households/read-household';

const plan = planOf('mill-lane');
const moneyOf = (of: Plan, kind: string) => of.money.routes.find((route) => route.kind === kind)!;
const routeOf = (of: Plan, kind: string) => of.routes.find((route) => route.kind === kind)!;

describe('the cost of an hour of outage', () => {
  test('is the cost a year over the hours this route is expected to ride, by the spread of lengths', () => {
    const { outlook } = plan;
    const hours = (kind: string) => {
      const lastsHours = routeOf(plan, kind).lasting.hours?.value ?? null;
      const sort = (times: number, all: number) =>
        carriedHours({ timesPerYear: times, hoursPerYear: all, lastsHours });
      return (
        sort(outlook.ordinaryTimes.value, outlook.ordinaryHours.value) +
        sort(outlook.majorTimes.value, outlook.majorHours.value)
      );
    };
    for (const kind of ['power-pack', 'engine-cords', 'battery-circuits', 'battery-solar']) {
      const { money, ridden } = moneyOf(plan, kind);
      expect(ridden.ordinary + ridden.major, kind).toBeCloseTo(hours(kind), 9);
      expect(money.perOutageHour!.likely).toBeCloseTo(money.costPerYear.likely / hours(kind), 9);
      expect(hours(kind)).toBeLessThan(outlook.ordinaryHours.value + outlook.majorHours.value);
    }
    expect(hours('battery-solar')).toBeGreaterThan(hours('power-pack'));
  });

  test('is not given for a battery that carries 1 of 5: the table says so, and a note below says why', () => {
    const { money, ridden } = moneyOf(plan, 'single-battery');
    expect(ridden).toMatchObject({ carried: 1, of: 5 });
    expect(money.perOutageHour).toBeNull();
    const text = planMarkdown(plan, english);
    expect(text).toMatch(/Small battery for one job: .*an outage hour carries 1 of 5;/);
    expect(text).toContain('A route that carries a part of what must run has no such figure.');
  });

  test('is none where there is no power', () => {
    expect(moneyOf(plan, 'preparation').money.perOutageHour).toBeNull();
    expect(planMarkdown(plan, english)).toMatch(
      /Getting ready, without a power source: .*an outage hour carries none;/,
    );
  });
});

describe('wear and replacement', () => {
  // Prices by the clock that make a battery work every day, and charge that it need not keep.
  const working = planOf('mill-lane', {
    'bill-kwh': 900,
    'bill-plan': 'time-of-use',
    'price-steps': 'two',
    'price-peak': 90,
    'price-low': 10,
    'peak-hours': 'h7-23',
    'peak-days': 'every',
    'peak-season': 'all-year',
    'other-aims': ['lower-bills'],
    'grid-charge': 'yes',
    'goal-hours': 2,
  });
  const { between, money, batteryLife, parts } = moneyOf(working, 'battery-circuits');

  test('savings are counted whole, year by year, less fade: wear is not taken off them', () => {
    const { likely } = money.byCase;
    const upkeep = parts.reduce((sum, part) => sum + part.upkeepPerYear.likely, 0);
    const { fuelPerYear } = moneyOf(working, 'battery-circuits').ridden;
    expect(between!.wear).toBeGreaterThan(0);
    expect(likely.flow[1]).toBeCloseTo(between!.savings - upkeep - fuelPerYear.likely, 6);
    expect(likely.flow[2]).toBeCloseTo(0.98 * between!.savings - upkeep, 6);
  });

  test('it stands in the life instead: 4,000 kWh through each kWh, where that ends before the age', () => {
    const kwhOut = between!.wear / (300 / 4000);
    const nameplate = routeOf(working, 'battery-circuits').nameplateKwh!;
    expect(batteryLife!.years).toBeCloseTo(Math.min(15, (4000 * nameplate) / kwhOut), 6);
    const battery = parts.find((part) => part.equipmentClass === 'battery')!;
    expect(battery.lifeYears).toBe(batteryLife!.years);
  });

  test('and the plan says which of the two ends it', () => {
    const text = planMarkdown(working, english);
    expect(text).toMatch(/is used up after about|old before it is used up/);
    expect(text).toContain('no wear is counted beside that');
    expect(text).toContain('Daylight saving time is not counted');
    expect(planMarkdown(plan, english)).not.toContain('Daylight saving');
  });
});

describe('what the money leans on', () => {
  test('is among the sources: the method, the record of outages, and fuel where it is burned', () => {
    const all = english.cites(plan.sources).join('\n');
    expect(all).toContain('NIST Handbook 135');
    expect(all).toContain('EIA Electric Power Annual tables 11.1');
    expect(all).toContain('Retail prices of about 2023 to 2025');
  });

  test('is the price table of the states only where no price was told', () => {
    const table = 'Average';
    const open = planOf('mill-lane', { 'bill-price': 'not sure' });
    const before = english.cites(plan.sources);
    const more = english.cites(open.sources).filter((source) => !before.includes(source));
    expect(more.join('\n')).toMatch(/EIA|Energy Information Administration/);
    expect(english.tariff(open.home, open.money.tariff!)).toContain(table.toLowerCase());
  });
});

test('an old price says which route it is part of, so that it does not gainsay the table of routes', () => {
  const lines = plan.money.oldPrices.map(english.oldPrice);
  for (const line of lines) expect(line).toContain('It is part of: ');
  const shown = new Set(
    [plan.advice.route, ...plan.advice.beside].map((r) =>
      english.routeTitle(r.called).toLowerCase(),
    ),
  );
  const old = lines.join('\n').toLowerCase();
  for (const title of shown) {
    const years = routeOf(
      plan,
      plan.routes.find((r) => english.routeTitle(r.called).toLowerCase() === title)!.kind,
    )
      .parts.map((part) => part.year)
      .filter((year) => year > 0);
    expect(old.includes(title), title).toBe(Math.min(...years) < 2024);
  }
});

test('a price told without a bill is called told, not read off a bill', () => {
  const text = planMarkdown(planOf('tower-six'), english);
  expect(text).toContain('the prices you told us: one price at all hours, 13.0 cents a kWh');
  expect(text).not.toContain('read off your bill');
});
