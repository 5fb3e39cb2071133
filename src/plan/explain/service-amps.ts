import type { LoadLine } from '../../physics/service-load/load-lines';
import { reference } from '../../quantity/cite';
import { type Figure, figure } from '../../quantity/figure';
import { addFigures, operand, worked } from '../../quantity/figure-arithmetic';
import { carefulSum } from '../electrical/load-calculation';
import { lineVolts } from '../electrical/service-facts';
import type { Plan } from '../plan';

/** The load of the service by the largest of the code's sums, line by line; null where none was worked out. */
export function serviceAmps({ electrical, home }: Plan): Figure | null {
  const sums = electrical.loadCalculation.editions.flatMap(({ edition, sums }) =>
    sums.map((sum) => ({ ...sum, edition })),
  );
  const volts = lineVolts(home);
  if (sums.length === 0 || volts === null) return null;
  const largest = sums.reduce((a, b) => (b.amps > a.amps ? b : a));
  return figure({
    value: largest.amps,
    high: Math.max(largest.amps, largest.carefulAmps),
    unit: 'A',
    source: { kind: 'formula' },
    as: () => amps(sumOf(largest.lines), volts),
    endAs: () => {
      const careful = carefulSum(home, largest.edition, largest.method);
      return careful === null ? undefined : amps(sumOf(careful.lines, careful.extraVa), volts);
    },
  });
}

function amps(va: Figure, volts: number): Figure {
  const under = [operand(volts, 'V', 'line-volts')];
  return worked({ by: 'ratio', of: [va], under }, { unit: 'A' });
}

function sumOf(lines: readonly LoadLine[], extraVa = 0): Figure {
  const extra = operand(extraVa, 'VA', 'charger-for-hours', {
    kind: 'table',
    cite: reference('NEC 210.20(A)'),
  });
  const counted = lines
    .filter((line) => line.counted)
    .map(({ is, va, section }) =>
      operand(
        va,
        'VA',
        { code: 'load-line', line: is },
        { kind: 'table', cite: reference(`NEC ${section}`) },
      ),
    );
  return addFigures(extraVa === 0 ? counted : [...counted, extra], {
    unit: 'VA',
    is: 'service-sum',
  });
}
