import type { QuestionId } from '#compiled/question-ids.js';
import { type Figure, figure } from '../../quantity/figure';
import { operand, timesFigure, worked } from '../../quantity/figure-arithmetic';
import type { FigureName } from '../../quantity/figure-name';
import { compressorLabels } from '../../tables/electrical/compressor-labels';
import { practice, practiceRange } from '../../tables/practice-figures';
import { asFigure, type LoadContext } from './context';

const VOLTS = 240;
const SUPPLY = operand(VOLTS, 'V', 'supply-volts');
const USUAL_FACTOR = operand(practice('compressor-power-factor'), 'count', 'power-factor', {
  kind: 'practice',
});

/** Tons of cooling from floor area: one ton for 600 ft2 (500 to 800). */
export function tonsFromArea(context: LoadContext): Figure {
  const area = asFigure(context, 'home-area', 'ft2');
  const usual = practiceRange('usual-floor-area');
  const perTon = practiceRange('ton-per-ft2');
  const ft2 = area?.value ?? usual.likely;
  const clamp = (tons: number) => Math.min(5, Math.max(1.5, tons));
  return figure({
    value: clamp(ft2 / perTon.likely),
    low: clamp((area?.low ?? usual.low) / perTon.high),
    high: clamp((area?.high ?? usual.high) / perTon.low),
    unit: 'tons',
    name: 'compressor-size',
    source: {
      kind: 'practice',
      is: 'floor-area',
      cite: ['common-practice-no-source'],
    },
  });
}

/** Running power from the running amps on the outdoor label, or undefined when it was not read. */
export function compressorWatts(context: LoadContext, id: QuestionId): Figure | undefined {
  const amps = asFigure(context, id, 'A', true);
  if (amps === null) return undefined;
  return worked(
    { by: 'ratio', of: [amps, SUPPLY, USUAL_FACTOR], under: [] },
    {
      unit: 'W',
      name: 'compressor-power',
      source: {
        kind: 'nameplate',
        is: 'compressor-amps-read',
        from: [amps],
      },
    },
  );
}

interface StartOf {
  /** Question ids. */
  readonly kind: 'cool-kind' | 'heat-pump-kind';
  readonly startAmps: QuestionId;
  readonly tons: Figure;
  readonly watts: Figure | undefined;
}

/**
 * Apparent power at the start: locked-rotor amps on the label; for a variable-speed machine about its running
 * current; else the band of labels of that size. Undefined: the table row decides.
 */
export function compressorStart(context: LoadContext, given: StartOf): Figure | undefined {
  const name = 'compressor-start';
  const label = asFigure(context, given.startAmps, 'A', true);
  if (label !== null) {
    const source = {
      kind: 'nameplate',
      is: { code: 'start-read', volts: VOLTS },
      from: [label],
    } as const;
    return timesFigure(label, SUPPLY, { unit: 'VA', name, source });
  }
  if (context.facts.told(given.kind) && context.facts.is(given.kind, 'variable')) {
    const running =
      given.watts ?? timesFigure(given.tons, 1000, { unit: 'W', name: 'power-by-size' });
    return timesFigure(running, practiceRange('variable-speed-start'), {
      unit: 'VA',
      name,
      source: {
        kind: 'practice',
        is: 'starts-as-it-runs',
        cite: ['common-practice-no-source'],
      },
    });
  }
  return bandOf(given.tons, name);
}

function bandOf(tons: Figure, name: FigureName): Figure {
  const row = (size: number) =>
    compressorLabels.rows.find((r) => r.tons >= size - 1e-9) ?? compressorLabels.rows.at(-1)!;
  const likely = row(tons.value);
  const source = {
    kind: 'table',
    is: 'compressor-labels',
    cite: ['typical-compressor-labels'],
  } as const;
  return figure({
    value: ((likely.lockedRotorLow + likely.lockedRotorHigh) / 2) * VOLTS,
    low: row(tons.low).lockedRotorLow * VOLTS,
    high: row(tons.high).lockedRotorHigh * VOLTS,
    unit: 'VA',
    name,
    source,
  });
}
