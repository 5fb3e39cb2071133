import type { Payback, PaybackTime } from '../../../bill/lifecycle/payback';

/** A payback in words, for a person. */
export function sayPayback(found: Payback, horizonYears: number): string {
  const at = (time: PaybackTime) => `${time.years.toFixed(1)} years`;
  switch (found.kind) {
    case 'nothing-to-recover':
      return 'nothing extra is spent, so there is nothing to pay back';
    case 'never':
      return `never within ${horizonYears} years`;
    case 'lost-again':
      return `after ${at(found.first)}, then lost again to a later replacement`;
    case 'recovered':
      return found.stays.years > found.first.years
        ? `after ${at(found.first)} at first, for good after ${at(found.stays)}`
        : `after ${at(found.first)}`;
  }
}
