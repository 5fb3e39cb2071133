import type { Figure } from '../../../quantity/figure';
import type { Made } from '../../../quantity/made';

/** A step to be done by hand: "1,440 W = 12 A x 120". */
export function step(result: string, made: Made, print: (one: Figure) => string): string {
  return `${result} = ${right(made, print)}`;
}

function right(made: Made, print: (one: Figure) => string): string {
  const all = made.of.map(print);
  switch (made.by) {
    case 'sum':
      return all.length === 0 ? '0' : all.join(' + ');
    case 'difference':
      return all.join(' - ');
    case 'ratio':
      return [all.join(' x '), ...made.under.map(print)].join(' / ');
    case 'largest':
      return `the larger of ${all.join(' and ')}`;
    case 'smallest':
      return `the smaller of ${all.join(' and ')}`;
    case 'rounded':
      return `${all[0]}, to the nearest ${made.to}`;
    case 'rounded-up':
      return `${all[0]}, up to the next ${made.to}`;
  }
}
