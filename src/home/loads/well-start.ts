import { startFromHorsepower } from '../../physics/motor-start';
import { type Figure, figure } from '../../quantity/figure';
import { operand, timesFigure } from '../../quantity/figure-arithmetic';
import { lockedRotorCurrent } from '../../tables/electrical/locked-rotor-current';
import { type HouseholdLoadId, householdLoad } from '../../tables/household-loads';
import { practiceRange } from '../../tables/practice-figures';
import { asFigure, type LoadContext } from './context';

interface WellStart {
  readonly volts: 120 | 240;
  readonly hp: number;
  readonly runningAmps: number;
  readonly row: HouseholdLoadId;
}

const name = 'well-start';

/**
 * Apparent power at the start of a well pump: locked-rotor amps on the label; a soft start from the running current;
 * 120 V from the horsepower table; else the range of its row, whose high end is the two-wire motor.
 */
export function wellStart(context: LoadContext, given: WellStart): Figure {
  const label = asFigure(context, 'well-start-amps', 'A', true);
  if (label !== null) {
    const source = {
      kind: 'nameplate',
      is: { code: 'start-read', volts: given.volts },
      from: [label],
    } as const;
    return timesFigure(label, operand(given.volts, 'V', 'supply-volts'), {
      unit: 'VA',
      name,
      source,
    });
  }
  if (context.facts.told('well-start-kind') && context.facts.is('well-start-kind', 'soft-start')) {
    return softStart(given);
  }
  if (given.volts === 120) return fromTable(given);
  return fromRow(
    given.row,
    context.facts.told('well-start-kind') && context.facts.is('well-start-kind', 'three-wire'),
  );
}

function softStart({ runningAmps, volts }: WellStart): Figure {
  const va = runningAmps * volts;
  const times = practiceRange('soft-start-multiple');
  return figure({
    value: times.likely * va,
    low: times.low * va,
    high: times.high * va,
    unit: 'VA',
    name,
    source: {
      kind: 'practice',
      is: { code: 'soft-start', low: times.low, high: times.high },
      cite: ['common-practice-no-source'],
    },
  });
}

function fromTable({ hp, volts }: WellStart): Figure {
  const row =
    lockedRotorCurrent.rows.find((r) => r.hp >= hp - 0.01) ?? lockedRotorCurrent.rows.at(-1)!;
  const { va } = startFromHorsepower({ tableAmps: row.amps115, volts: 115 });
  return figure({
    value: va.likely,
    low: va.low,
    high: va.high,
    unit: 'VA',
    name,
    source: {
      kind: 'table',
      is: { code: 'start-by-horsepower', hp, volts },
      cite: [{ ref: 'NEC Table 430.251(A)' }],
    },
  });
}

/** A three-wire motor lies in the lower half of the band, a two-wire one in the upper half. */
function fromRow(id: HouseholdLoadId, threeWire: boolean): Figure {
  const row = householdLoad(id);
  const [low, likely, high] = row.startingVa;
  const value = threeWire ? (low + likely) / 2 : (likely + high) / 2;
  return figure({
    value,
    low,
    high: threeWire ? likely : high,
    unit: 'VA',
    name,
    source: {
      kind: 'table',
      is: { code: 'start-usual', wires: threeWire ? 'three' : 'two' },
      cite: row.source,
    },
  });
}
