import { type Figure, figure } from '../../quantity/figure';
import { addFigures, operand, worked } from '../../quantity/figure-arithmetic';
import type { LoadSum } from '../electrical/load-calculation';
import { lineVolts } from '../electrical/service-facts';
import type { Plan } from '../plan';

/** The load of the service by the largest of the code's sums, line by line; null where none was worked out. */
export function serviceAmps({ electrical, home }: Plan): Figure | null {
  const sums = electrical.loadCalculation.editions.flatMap((one) => one.sums);
  const volts = lineVolts(home);
  if (sums.length === 0 || volts === null) return null;
  const largest = sums.reduce((a, b) => (b.amps > a.amps ? b : a));
  return figure({
    value: largest.amps,
    high: Math.max(largest.amps, largest.carefulAmps),
    unit: 'A',
    source: { kind: 'formula', label: '' },
    as: () =>
      worked(
        { by: 'ratio', of: [sumOf(largest)], under: [operand(volts, 'V', 'line-volts')] },
        { unit: 'A' },
      ),
  });
}

function sumOf({ lines }: LoadSum): Figure {
  const counted = lines
    .filter((line) => line.counted)
    .map(({ is, va, section }) =>
      operand(va, 'VA', { code: 'load-line', line: is }, { kind: 'table', cite: `NEC ${section}` }),
    );
  return addFigures(counted, { unit: 'VA', is: 'service-sum' });
}
