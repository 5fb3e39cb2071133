import { expect, it } from 'vitest';
import { neededForEveryStart } from '../../src/outage/every-start';
import { hoursSurvived } from '../../src/outage/hours-survived';
import { cutToPieces, startsOfPieces } from '../../src/outage/season-pieces';
import { valuesInSeason } from '../../src/outage/season-starts';
import { quantileOfYears, sizeForShareOfYears } from '../../src/outage/size-by-odds';
import { seeded } from './plain-walk';

const random = seeded(11);
const net = Float64Array.from({ length: 3 * 8760 }, (_, t) => random() - 0.55 + 0.3 * Math.sin(t));

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
    needed.forEach((kwh, i) => {
      expect(kwh).toBeCloseTo(expected[i]!, 9);
    });
    expect(quantileOfYears(needed, season, 0.9)).toBeCloseTo(
      sizeForShareOfYears(whole, season, 0.9)!,
      9,
    );
    const lasts = (netKwh: Float64Array) => hoursSurvived({ netKwh, capKwh: 9, limitHours: 336 });
    const survived = startsOfPieces(pieces, lasts(cut));
    const there = valuesInSeason(season, lasts(net));
    survived.forEach((hours, i) => {
      expect(hours).toBeCloseTo(there[i]!, 9);
    });
    expect(new Set(survived).size).toBeGreaterThan(100);
  },
);
