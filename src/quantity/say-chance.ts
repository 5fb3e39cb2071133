import type { Figure } from './figure';

/** Denominators people say: nothing finer is claimed for a chance known so roughly. */
const SPOKEN = [2, 3, 4, 5, 6, 7, 8, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100];

/**
 * A weakly known chance in %, in round words with its range: "about 1 in 5 (1 in 25 to 1 in 3)".
 * From 60 % on in tenths: "about 7 in 10". The range is left out when both ends read like the middle.
 */
export function sayOneIn({ low, value, high }: Pick<Figure, 'low' | 'value' | 'high'>): string {
  const [from, likely, to] = [low, value, high].map(oneIn) as [string, string, string];
  if (from === likely && to === likely) return `about ${likely}`;
  return `about ${likely} (${from} to ${to})`;
}

function oneIn(percent: number): string {
  if (percent < 1) return 'less than 1 in 100';
  if (percent > 95) return 'more than 19 in 20';
  if (percent >= 60) return `${Math.round(percent / 10)} in 10`;
  const times = 100 / percent;
  const nearest = SPOKEN.reduce((a, b) =>
    Math.abs(Math.log(b / times)) < Math.abs(Math.log(a / times)) ? b : a,
  );
  return `1 in ${nearest}`;
}

/** From here on a rate is said by the year: nobody says "one in 1 years". */
const ABOUT_ONE = 2 / 3;

/**
 * A weakly known rate a year, in round words: "about 2 a year (1 to 3)"; below one a year as "about one in 4 years
 * (one in 15 to one in 2)".
 */
export function sayTimesAYear({
  low,
  value,
  high,
}: Pick<Figure, 'low' | 'value' | 'high'>): string {
  if (value < ABOUT_ONE) {
    const [from, likely, to] = [low, value, high].map(years) as [string, string, string];
    return `about ${likely} (${from} to ${to})`;
  }
  const [from, likely, to] = [low, value, high].map((times) => Math.round(times)) as [
    number,
    number,
    number,
  ];
  const least = from === 0 ? 'fewer than one' : String(from);
  return `about ${likely} a year (${least} to ${to})`;
}

function years(times: number): string {
  if (times >= ABOUT_ONE) return `${Math.round(times)} a year`;
  return times <= 0.01 ? 'one in 100 years or more' : `one in ${Math.round(1 / times)} years`;
}
