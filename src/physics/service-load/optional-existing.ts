import type { DwellingLoads, ServiceLoadRules } from './dwelling';
import { twoStepLines } from './general-load';
import { largerWholeLines } from './heating-or-cooling';
import { type LoadLine, type ServiceLoad, serviceLoad, shownLine } from './load-lines';
import { optionalGeneralLines } from './optional-new';

export interface ExistingServiceLoad extends ServiceLoad {
  /** The same with heating and cooling inside the 40 % part; null where equipment is being added. */
  readonly lenientVa: number | null;
}

/**
 * Load of an existing dwelling, NEC 220.83, old and new loads together: the first 8 kVA whole, the rest at 40 %, and the
 * larger of heating and cooling whole. Only tells whether the present service is enough; it sizes nothing.
 * Where no heating or cooling is being added (A), inspectors differ on what is there already: it is taken whole here,
 * and `lenientVa` holds the other reading.
 */
export function existingServiceLoad(
  home: DwellingLoads & { readonly addsHeatingOrCooling: boolean },
  rules: ServiceLoadRules,
): ExistingServiceLoad {
  const section = `${rules.existingSection}(${home.addsHeatingOrCooling ? 'B' : 'A'})`;
  const items = optionalGeneralLines(home, rules).map((line) => ({ ...line, section }));
  const generalVa = sumOf(items);
  const hvac = largerWholeLines(home.heatingCooling, section);
  const lines = [
    ...items.map((line) => ({ ...line, counted: false })),
    shownLine('General load', generalVa, section),
    ...twoStepLines(generalVa, rules.existingFirstVa, rules.restShare, section),
    ...hvac,
  ];
  const hvacVa = sumOf(hvac.filter((line) => line.counted));
  const lenient = twoStepLines(generalVa + hvacVa, rules.existingFirstVa, rules.restShare, section);
  const disputed = !home.addsHeatingOrCooling && hvacVa > 0;
  const notes = disputed
    ? ['Inspectors differ on existing heating and cooling: here it counts whole.']
    : [];
  return {
    ...serviceLoad(lines, home.volts, notes),
    lenientVa: disputed ? sumOf(lenient) : null,
  };
}

const sumOf = (lines: readonly LoadLine[]) => lines.reduce((sum, line) => sum + line.va, 0);
