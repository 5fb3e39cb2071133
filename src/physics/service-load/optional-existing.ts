import type { DwellingLoads, ServiceLoadRules } from './dwelling';
import { twoStepLines } from './general-load';
import { oneCountedLines } from './heating-or-cooling';
import {
  type LoadLine,
  type LoadNote,
  type ServiceLoad,
  serviceLoad,
  shownLine,
} from './load-lines';
import { optionalGeneralLines } from './optional-new';
import { type WholeShare, wholeShares } from './whole-shares';

export interface ExistingServiceLoad extends ServiceLoad {
  /** The same with heating and cooling inside the 40 % part; null where equipment is being added. */
  readonly lenientVa: number | null;
}

/**
 * Load of an existing dwelling, NEC 220.83, old and new loads together: the first 8 kVA whole, the rest at 40 %, and the
 * larger of heating and cooling whole; four or more separately controlled room heaters are not on the list of what counts
 * whole, so they stand with the other loads. Of heating and cooling the one with which the sum is larger is taken.
 * Only tells whether the present service is enough; it sizes nothing. Where no heating or cooling is being added (A),
 * inspectors differ on what is there already: it is counted as in (B), and `lenientVa` holds the other reading.
 */
export function existingServiceLoad(
  home: DwellingLoads & { readonly addsHeatingOrCooling: boolean },
  rules: ServiceLoadRules,
): ExistingServiceLoad {
  const section = `${rules.existingSection}(${home.addsHeatingOrCooling ? 'B' : 'A'})`;
  const items = optionalGeneralLines(home, rules).map((line) => ({ ...line, section }));
  const plainVa = sumOf(items);
  const inSteps = (va: number) => twoStepLines(va, rules.existingFirstVa, rules.restShare, section);
  const totalWith = (share: WholeShare) =>
    sumOf(inSteps(plainVa + share.manyHeatersVa)) + share.va - share.manyHeatersVa;
  const ranked = wholeShares(home.heatingCooling).sort((a, b) => totalWith(b) - totalWith(a));
  const heatersVa = ranked[0]?.manyHeatersVa ?? 0;
  const lines = [
    ...items.map((line) => ({ ...line, counted: false })),
    ...(heatersVa > 0 ? [shownLine({ code: 'room-heaters' }, heatersVa, section)] : []),
    shownLine({ code: 'general-load' }, plainVa + heatersVa, section),
    ...inSteps(plainVa + heatersVa),
    ...oneCountedLines(wholeOnly(ranked), section).filter((line) => line.va > 0),
  ];
  const hvacVa = ranked[0]?.va ?? 0;
  const disputed = !home.addsHeatingOrCooling && hvacVa > heatersVa;
  const notes: LoadNote[] = disputed ? ['existing-climate-whole'] : [];
  return {
    ...serviceLoad(lines, home.volts, notes),
    lenientVa: disputed ? sumOf(inSteps(plainVa + hvacVa)) : null,
  };
}

/** The part of the share taken that counts whole, then what is left out. */
function wholeOnly(ranked: readonly WholeShare[]): Pick<WholeShare, 'of' | 'va'>[] {
  const [first, ...rest] = ranked;
  if (first === undefined) return [];
  return [{ ...first, va: first.va - first.manyHeatersVa }, ...rest];
}

const sumOf = (lines: readonly LoadLine[]) => lines.reduce((sum, line) => sum + line.va, 0);
