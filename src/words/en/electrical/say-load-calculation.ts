import type { LoadNote } from '../../../physics/service-load/load-lines';
import type { DwellingAssumption } from '../../../plan/electrical/dwelling-loads';
import type {
  EditionNote,
  LoadCalculation,
  LoadFinding,
  LoadMethod,
  NeededAnswer,
} from '../../../plan/electrical/load-calculation';
import { shown } from '../../../quantity/shown';

const methods: Readonly<Record<LoadMethod, string>> = {
  'optional-existing': 'optional, existing dwelling',
  'optional-new': 'optional, new dwelling',
  standard: 'standard',
};

const notes: Readonly<Record<LoadNote, string>> = {
  'existing-climate-whole':
    'Inspectors differ on existing heating and cooling: here it counts whole.',
  'service-100-or-more': 'Only for a service or feeder of 100 A or more.',
};

const answers: Readonly<Record<NeededAnswer, string>> = {
  'home-area': 'floor area',
  'big-loads': 'big loads',
  'heat-main': 'main heat',
  'cool-main': 'cooling',
  'water-heater': 'water heater',
  'cook-main': 'cooking',
  'ev-breaker': 'breaker of the car charger',
  'supply-volts': 'supply voltage',
};

export const loadMethod = (method: LoadMethod): string => methods[method];

export const sayLoadNote = (note: LoadNote): string => notes[note];

/** Which methods are shown for an edition, and why. */
export function sayEditionNote(note: EditionNote): string {
  switch (note.code) {
    case 'numbers-not-held':
      return 'We do not hold all numbers of this edition, so no sum is given.';
    case 'existing-and-new':
      return '220.83 tells whether the present service is enough; 220.82 is the measure for new work.';
    case 'standard-shown':
      return `The optional method for new work needs a service known to be ${note.leastAmps} A or more, so the standard method is shown.`;
  }
}

/** What the sums rest on beyond the answers. */
export function sayDwellingAssumption(assumption: DwellingAssumption): string {
  switch (assumption.code) {
    case 'least-circuits':
      return 'Two kitchen circuits and one laundry circuit are counted, the least the code counts.';
    case 'floor-area':
      return `The floor area is assumed: ${assumption.ft2} sq ft.`;
    case 'range-label':
      return `The range is counted at ${assumption.va / 1000} kVA; its label was not read.`;
    case 'dryer-label':
      return `The dryer is counted at ${assumption.va / 1000} kVA; its label was not read.`;
    case 'few-heater-controls':
      return 'The heaters are counted as fewer than four controls, which is the careful reading.';
  }
}

/** What came of the load calculation. */
export function sayLoadCalculation({
  finding,
  leastHouseAmps,
}: Pick<LoadCalculation, 'finding' | 'leastHouseAmps'>): string {
  const says = sayFinding(finding);
  return leastHouseAmps === null
    ? says
    : `${says} A new or changed service of a house is rated ${leastHouseAmps} A or more (230.79(C)).`;
}

function sayFinding(finding: LoadFinding): string {
  switch (finding.code) {
    case 'of-the-building':
      return 'The service belongs to the building: its manager and electrician hold the calculation.';
    case 'supply-120':
      return 'The supply is 120 V only; the methods of Article 220 used here are for 120/240 V and 120/208 V.';
    case 'main-not-read':
      return `${found(finding)}. The main breaker was not read, so nothing is judged. An electrician reads it first.`;
    case 'answers-assumed':
      return `${found(finding)}, on a ${finding.mainAmps} A main, but these answers are assumed: ${finding.assumed.map((id) => answers[id]).join(', ')}. Electrician and inspector decide.`;
    case 'within':
      return `${found(finding)}, on a ${finding.mainAmps} A main: 80 % of it or less both ways, as a planning figure. The electrician's own calculation decides.`;
    case 'over':
      return `${found(finding)}, on a ${finding.mainAmps} A main: more than the main, as a planning figure. Electrician and inspector decide.`;
    case 'marginal':
      return `${found(finding)}, on a ${finding.mainAmps} A main: marginal. Electrician and inspector decide.`;
  }
}

const found = ({ amps, carefulAmps }: { amps: number; carefulAmps: number }) =>
  `The loads named come to ${shown(amps, 'A')}, ${shown(carefulAmps, 'A')} by the careful count`;
