// From answers to the lines of a bill. The bills are invented; what is expected is arithmetic on them.
import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { monthDays, yearDays } from '../../../src/bill/tariff/bill-days';
import { sumLines } from '../../../src/bill/tariff/bill-line';
import { billYear } from '../../../src/bill/tariff/bill-year';
import { checkTariff } from '../../../src/bill/tariff/check-tariff';
import { tariffHours } from '../../../src/bill/tariff/tariff-hours';
import { type Answers, NOT_SURE } from '../../../src/interview/answers';
import { homeFromAnswers } from '../../../src/plan/home-from-answers';
import { billFit } from '../../../src/plan/money/bill-fit';
import { tariffOf } from '../../../src/plan/money/tariff-of';
import { sayTariff } from '../../../src/words/en/money/say-tariff';

const homeOf = (answers: Answers) =>
  homeFromAnswers(
    interview,
    { 'home-zip': '43215', 'home-kind': 'house', ...answers },
    '2026-11-25',
  );
const ofHome = (answers: Answers) => {
  const of = tariffOf(homeOf(answers))!;
  expect(checkTariff(of.tariff)).toEqual([]);
  return { tariff: of.tariff, says: sayTariff(homeOf(answers), of) };
};
/** Bills of a month with the same kWh in and out in every hour. */
const monthBill = (answers: Answers, month: number, kwh = 1, out = 0) => {
  const days = monthDays(2026, month);
  const all = (each: number) => new Float64Array(days.length * 24).fill(each);
  const { tariff } = ofHome(answers);
  return billYear({ tariff, days, importKwh: all(kwh), exportKwh: all(out) }).months[0]!;
};
const clocked: Answers = {
  'bill-plan': 'time-of-use',
  'bill-fixed': 10,
  'price-steps': 'two',
  'price-peak': 40,
  'price-low': 20,
  'peak-hours': 'h16-21',
  'peak-days': 'every',
  'peak-season': 'all-year',
};
const tiers: Answers = {
  'bill-plan': 'tiers',
  'bill-fixed': 10,
  'bill-kwh': 700,
  'bill-days': 28,
  'tier-limit': 280,
  'tier-first': 10,
  'tier-price': 30,
};
const seen = (lines: string[], answers: Answers): Answers => ({ 'bill-lines': lines, ...answers });

describe('other charges', () => {
  test('2 cents more for each of 720 kWh, $3.50 more a month, and 5 % tax on all of it', () => {
    const lines = seen(['rider-kwh', 'rider-month', 'tax'], {
      'rider-kwh': 2,
      'rider-month': 3.5,
      'tax-percent': 5,
    });
    const bill = monthBill({ ...clocked, ...lines }, 4); // 30 days
    const energy = 30 * (5 * 0.4 + 19 * 0.2);
    expect(sumLines(bill.lines, 'energy')).toBeCloseTo(energy, 9);
    expect(sumLines(bill.lines, 'rider')).toBeCloseTo(720 * 0.02 + 3.5, 9);
    const untaxed = 10 + energy + 720 * 0.02 + 3.5;
    expect(sumLines(bill.lines, 'tax')).toBeCloseTo(0.05 * untaxed, 9);
    expect(bill.total).toBeCloseTo(1.05 * untaxed, 9);
    expect(ofHome({ ...clocked, ...lines }).says).toContain(
      'Beside it: $10 fixed charge a month, 2.0 cents more for each kWh, $3.50 more a month and 5 % tax on all charges.',
    );
  });

  test('a credit is a minus', () => {
    const bill = monthBill({ ...clocked, ...seen(['rider-kwh'], { 'rider-kwh': -1.5 }) }, 4);
    expect(sumLines(bill.lines, 'rider')).toBeCloseTo(-0.015 * 720, 9);
  });

  test('seen and not known, each is left out, and it is said', () => {
    const lines = seen(['rider-kwh', 'tax', 'baseline'], {
      'rider-kwh': NOT_SURE,
      'tax-percent': NOT_SURE,
      'baseline-credit': NOT_SURE,
    });
    const plain = monthBill(clocked, 4).total;
    expect(monthBill({ ...clocked, ...lines }, 4).total).toBeCloseTo(plain, 9);
    expect(ofHome({ ...clocked, ...lines }).says).toContain(
      'Left out, because it is not known: the other charge for each kWh, the tax and the baseline credit.',
    );
  });

  test('a bill without them says nothing of them', () => {
    expect(ofHome(seen(['none'], clocked)).says).not.toMatch(/Left out|more for each/);
  });
});

describe('a least bill', () => {
  const least = seen(['least-bill'], { 'least-bill': 30 });

  test('of $30 lifts a month of 48 kWh, $10 fixed and no more than $19.20 of energy', () => {
    const bill = monthBill({ ...clocked, ...least }, 4, 48 / 720);
    const energy = (48 / 24) * (5 * 0.4 + 19 * 0.2);
    expect(sumLines(bill.lines, 'minimum')).toBeCloseTo(30 - 10 - energy, 9);
    expect(bill.total).toBeCloseTo(30, 9);
  });

  test('not known, it is taken as $25, and it is said', () => {
    const open = seen(['least-bill'], { 'least-bill': NOT_SURE });
    expect(monthBill({ ...clocked, ...open }, 4, 0).total).toBe(25);
    expect(ofHome({ ...clocked, ...open }).says).toContain(
      'a least bill of $25 a month before tax (assumed)',
    );
  });
});

test('a baseline credit of 9 cents on 11 kWh a day comes off a month of 24 kWh a day', () => {
  const lines = seen(['baseline'], { 'baseline-credit': 9, 'baseline-kwh': 11 });
  const bill = monthBill({ ...clocked, ...lines }, 4);
  expect(sumLines(bill.lines, 'baseline')).toBeCloseTo(-30 * 11 * 0.09, 9);
});

describe('a first block', () => {
  test('is the same on every bill unless told otherwise: 280 of 744 kWh', () => {
    const bill = monthBill(tiers, 1);
    expect(sumLines(bill.lines, 'energy')).toBeCloseTo(280 * 0.1 + (744 - 280) * 0.3, 9);
  });

  test('that grows with the days is 10 kWh a day where 280 were read off a bill of 28 days', () => {
    const bill = monthBill({ ...tiers, 'bill-lines': ['block-days'] }, 1);
    expect(sumLines(bill.lines, 'energy')).toBeCloseTo(310 * 0.1 + (744 - 310) * 0.3, 9);
  });

  test('takes the bill it was read from: 280 x 0.10 + 420 x 0.30 and the fixed charge of 28 days', () => {
    const answers = { ...tiers, 'bill-lines': ['block-days'] };
    const dollars = 280 * 0.1 + 420 * 0.3 + (10 * 28) / (365 / 12);
    const heldTo = (told: number) => {
      const home = homeOf({ ...answers, 'bill-dollars': told });
      return billFit(home, tariffOf(home)!)!;
    };
    expect(heldTo(dollars).expected.high).toBeCloseTo(dollars, 9);
    expect(heldTo(dollars).fits).toBe(true);
    expect(heldTo(1.2 * dollars).fits).toBe(false);
  });
});

test('the bill is held against its tax and riders too', () => {
  const lines = seen(['rider-kwh', 'tax'], { 'rider-kwh': 4, 'tax-percent': 10 });
  const bill = { 'bill-kwh': 500, 'bill-days': 30 };
  const heldTo = (answers: Answers) => {
    const home = homeOf({ ...clocked, ...bill, ...answers });
    return billFit(home, tariffOf(home)!)!;
  };
  const most = 1.1 * (500 * (0.4 + 0.04) + (10 * 30) / (365 / 12));
  expect(heldTo({ ...lines, 'bill-dollars': 250 }).expected.high).toBeCloseTo(most, 9);
  expect(heldTo({ ...lines, 'bill-dollars': 250 }).fits).toBe(true);
  expect(heldTo({ 'bill-dollars': 250 }).fits).toBe(false);
});

describe('one price at all hours', () => {
  const flat: Answers = { 'bill-plan': 'flat', 'bill-price': 22, 'bill-kwh': 500 };

  test('is the average less what the other lines make of it, so that the bill comes to the same', () => {
    const lines = seen(['rider-kwh', 'rider-month', 'tax'], {
      'rider-kwh': 3,
      'rider-month': 8,
      'tax-percent': 10,
    });
    const { tariff } = ofHome({ ...flat, ...lines });
    const price = 0.22 / 1.1 - 8 / 500 - 0.03;
    expect(tariff.seasons[0]!.periods[0]!.price).toBeCloseTo(price, 12);
    const bill = monthBill({ ...flat, ...lines }, 4, 500 / 720);
    expect(bill.total).toBeCloseTo(500 * 0.22, 9);
  });

  test('stays the average where the other lines would leave nothing of it, and it is said', () => {
    const of = ofHome({ ...flat, ...seen(['rider-kwh'], { 'rider-kwh': 25 }) });
    expect(of.tariff.seasons[0]!.periods[0]!.price).toBeCloseTo(0.22, 12);
    expect(of.tariff.riders).toBeUndefined();
    expect(of.says).toContain('come to more than the price of a kWh');
  });
});

describe('a demand charge that goes by an earlier month', () => {
  const demand: Answers = {
    ...clocked,
    'bill-plan': 'demand',
    'demand-price': 10,
    'demand-hours': 'all',
    'bill-lines': ['ratchet'],
    'ratchet-share': 80,
    'ratchet-months': 'm3',
  };
  const january = 5;
  const peaks = (answers: Answers) => {
    const days = yearDays(2026);
    const importKwh = new Float64Array(8760).fill(1);
    importKwh[100] = january;
    const { tariff } = ofHome(answers);
    const { months } = billYear({ tariff, days, importKwh, exportKwh: new Float64Array(8760) });
    return months.map((m) => sumLines(m.lines, 'demand'));
  };

  test('bills 80 % of 5 kW for the three months after it', () => {
    expect(peaks(demand).slice(0, 6)).toEqual([50, 40, 40, 40, 10, 10]);
    expect(ofHome(demand).says).toContain('at least 80 % of the highest of the last 3 months');
  });

  test('counts each month by itself where the share is not known, and says so', () => {
    const open = { ...demand, 'ratchet-share': NOT_SURE };
    expect(peaks(open).slice(0, 3)).toEqual([50, 10, 10]);
    expect(ofHome(open).says).toContain('goes by the highest of several months');
  });
});

describe('prices of two seasons', () => {
  const seasons: Answers = {
    ...clocked,
    'peak-season': 'dear-summer',
    'other-peak': 30,
    'other-low': 15,
  };

  test('July: 5 hours at 40 and 19 at 20 cents; January: 5 at 30 and 19 at 15', () => {
    const energy = (month: number) => sumLines(monthBill(seasons, month).lines, 'energy');
    expect(energy(7)).toBeCloseTo(31 * (5 * 0.4 + 19 * 0.2), 9);
    expect(energy(1)).toBeCloseTo(31 * (5 * 0.3 + 19 * 0.15), 9);
  });

  test('three prices keep their hours: middle and night have their own in the rest of the year', () => {
    const three = {
      ...seasons,
      'price-steps': 'three',
      'price-middle': 25,
      'low-hours': 'h0-6',
      'other-middle': 18,
    };
    const energy = (month: number) => sumLines(monthBill(three, month).lines, 'energy');
    expect(energy(7)).toBeCloseTo(31 * (5 * 0.4 + 6 * 0.2 + 13 * 0.25), 9);
    expect(energy(1)).toBeCloseTo(31 * (5 * 0.3 + 6 * 0.15 + 13 * 0.18), 9);
  });

  test('not known, the rest of the year has no peak', () => {
    const open = { ...seasons, 'other-peak': NOT_SURE };
    expect(sumLines(monthBill(open, 1).lines, 'energy')).toBeCloseTo(31 * 24 * 0.2, 9);
  });
});

test('no peak on holidays: Labor Day of 2026, 7 September, is priced as a weekend', () => {
  const peakHours = (days: string) => {
    const { tariff } = ofHome({ ...clocked, 'peak-days': days });
    const { importPrice } = tariffHours(tariff, monthDays(2026, 9));
    return [...importPrice].filter((price) => price === 0.4).length;
  };
  // September of 2026 has 22 weekdays.
  expect(peakHours('weekdays')).toBe(22 * 5);
  expect(peakHours('workdays')).toBe(21 * 5);
});

describe('solar sent out', () => {
  const solar = { ...clocked, 'other-aims': ['use-solar'] };

  test('by the hour: 4 cents by day and 12 from 4 pm to 9 pm', () => {
    const hourly = {
      ...solar,
      'export-rule': 'by-hour',
      'export-day': 4,
      'export-evening': 12,
    };
    const bill = monthBill(hourly, 4, 1, 0.5);
    expect(sumLines(bill.lines, 'export')).toBeCloseTo(-30 * 0.5 * (19 * 0.04 + 5 * 0.12), 9);
    const open = monthBill({ ...hourly, 'export-evening': NOT_SURE }, 4, 1, 0.5);
    expect(sumLines(open.lines, 'export')).toBeCloseTo(-30 * 0.5 * 24 * 0.04, 9);
  });

  test('by the hour and not known: a quarter of the lowest price of any season', () => {
    const seasons = { 'peak-season': 'dear-summer', 'other-peak': 30, 'other-low': 12 };
    const open = { ...solar, ...seasons, 'export-rule': 'by-hour', 'export-day': NOT_SURE };
    const bill = monthBill(open, 4, 1, 0.5);
    expect(sumLines(bill.lines, 'export')).toBeCloseTo(-30 * 24 * 0.5 * 0.03, 9);
  });

  test('net metering settles what is left over in the month told, at the price told', () => {
    const net = {
      'bill-plan': 'flat',
      'bill-price': 20,
      'other-aims': ['use-solar'],
      'export-rule': 'net-metering',
      'true-up-month': 'm4',
      'true-up-price': 4,
    };
    const { tariff, says } = ofHome(net);
    expect(tariff.export).toEqual({
      rule: 'net-metering',
      netting: 'total',
      trueUpMonth: 4,
      trueUpPrice: 0.04,
    });
    expect(says).toContain('left over in April');
    const bill = monthBill(net, 4, 1, 1.5);
    expect(sumLines(bill.lines, 'export')).toBeCloseTo(-720 * 0.5 * 0.04, 9);
    const open = ofHome({ ...net, 'true-up-month': NOT_SURE, 'true-up-price': NOT_SURE });
    expect(open.tariff.export).toMatchObject({ trueUpMonth: 12, trueUpPrice: 0 });
  });
});

test('a short consult asks none of these, and a bill nobody looked at does not either', () => {
  const later = ['bill-lines', 'rider-kwh', 'tax-percent', 'least-bill', 'baseline-credit'];
  expect(interview.opening.filter((id) => later.includes(id))).toEqual([]);
  const { facts } = homeOf({ 'bill-plan': 'flat', 'bill-price': NOT_SURE });
  expect(facts.ids().filter((id) => later.includes(id))).toEqual([]);
});
