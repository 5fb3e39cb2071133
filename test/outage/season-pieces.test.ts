import { expect, it } from 'vitest';
import { neededForEveryStart } from '../../src/outage/every-start';
import { hoursSurvived } from '../../src/outage/hours-survived';
import { cutToPieces, startsOfPieces } from '../../src/outage/season-pieces';
import { valuesInSeason } from '../../src/outage/season-starts';
import { quantileOfYears, sizeForShareOfYears } from '../../src/outage/size-by-odds';
import { seeded } from './plain-walk';

const random = seeded(11);
const net = Float64Array.from({ length: 3 * 8760 }, (_, t) => random() - 0.55 + 0.3 * Math.sin(t));

/** In so many sums, of kWh or hours. */
const ALIKE = 5e-10;

const worstGap = (some: Float64Array, others: Float64Array) =>
  some.reduce((worst, one, i) => Math.max(worst, Math.abs(one - others[i]!)), 0);

/** Winter over the turn of the year, summer, and a year less a month. */
const SEASONS = [
  { firstMonth: 11, months: 3 },
  { firstMonth: 5, months: 3 },
  { firstMonth: 2, months: 11 },
];

it.each(SEASONS)(
  'a pass over the pieces of $firstMonth for $months months tells its starts the same',
  (season) => {
    const pieces = { season, tailHours: 336 };
    const cut = cutToPieces(pieces, net);
    const needed = startsOfPieces(pieces, neededForEveryStart(cut, 336));
    const whole = neededForEveryStart(net, 336);
    const expected = valuesInSeason(season, whole);
    expect(needed.length).toBe(expected.length);
    expect(worstGap(needed, expected)).toBeLessThan(ALIKE);
    expect(quantileOfYears(needed, season, 0.9)).toBeCloseTo(
      sizeForShareOfYears(whole, season, 0.9)!,
      9,
    );
    const lasts = (netKwh: Float64Array) => hoursSurvived({ netKwh, capKwh: 9, limitHours: 336 });
    const survived = startsOfPieces(pieces, lasts(cut));
    const there = valuesInSeason(season, lasts(net));
    expect(survived.length).toBe(there.length);
    expect(worstGap(survived, there)).toBeLessThan(ALIKE);
    expect(new Set(survived).size).toBeGreaterThan(100);
  },
);
