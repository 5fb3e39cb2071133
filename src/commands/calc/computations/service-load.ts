import type { DwellingLoads, HeatingCooling } from '../../../physics/service-load/dwelling';
import type { ServiceLoad } from '../../../physics/service-load/load-lines';
import { existingServiceLoad } from '../../../physics/service-load/optional-existing';
import { optionalNewServiceLoad } from '../../../physics/service-load/optional-new';
import { standardServiceLoad } from '../../../physics/service-load/standard';
import { cookingDemand } from '../../../tables/electrical/cooking-demand';
import { LEAST_HOUSE_AMPS, leastHouseService } from '../../../tables/electrical/least-service';
import {
  type CodeEdition,
  type CompleteServiceLoadRules,
  serviceLoadRules,
  serviceLoadRulesOf,
} from '../../../tables/electrical/service-load-rules';
import { sayLoadNote } from '../../../words/en/electrical/say-load-calculation';
import { sayLoadLine } from '../../../words/en/electrical/say-load-line';
import type { Calculation, Outcome, Result } from '../calculation';
import { citedTables } from '../cited-table';
import type { Values } from '../values';
import { serviceLoadInputs } from './service-load-inputs';

/** Load of a dwelling's service, line by line as on an inspector's form. */
export const serviceLoadOf: Calculation = {
  name: 'service-load',
  about: 'load of a dwelling line by line, by the code; a planning figure',
  inputs: serviceLoadInputs,
  source: citedTables(serviceLoadRules, cookingDemand),
  example: 'method=standard area=1500 cooking=range 12 kW dryer=5.5 kW edition=2017',
  run: loadOf,
};

const MOST_COOKING = cookingDemand.rows.length;

function loadOf(values: Values): Outcome {
  const edition = Number(values.word('edition')) as CodeEdition;
  const rules = serviceLoadRulesOf(edition);
  if (rules === null) {
    return { ok: false, says: `not all numbers of the ${edition} edition are known to us.` };
  }
  if (values.list('cooking').length > MOST_COOKING) {
    return { ok: false, says: `the cooking table here holds ${MOST_COOKING} appliances at most.` };
  }
  const load = byMethod(values, rules);
  return {
    ok: true,
    steps: load.lines.map((line) => ({
      label: sayLoadLine(line.is),
      formula: `${line.section}${line.counted ? '' : ', shown only'}`,
      value: line.va,
      unit: 'VA',
    })),
    results: [
      { label: 'total', value: load.totalVa, unit: 'VA' },
      { label: `current at ${values.word('volts')} V`, value: load.amps, unit: 'A' },
      ...leastService(load.amps),
    ],
    notes: [
      ...load.notes.map(sayLoadNote),
      `A new or changed service of a one-family house is rated ${LEAST_HOUSE_AMPS} A or more (230.79(C)).`,
      'The code edition in force, local changes and a licensed electrician decide.',
    ],
  };
}

/** Smallest standard service for these amps, never under the least of a one-family house; nothing above the table. */
function leastService(amps: number): Result[] {
  const rating = leastHouseService(amps);
  return rating === null ? [] : [{ label: 'least service rating', value: rating, unit: 'A' }];
}

function byMethod(values: Values, rules: CompleteServiceLoadRules): ServiceLoad {
  const home = homeOf(values);
  switch (values.word('method')) {
    case 'standard': {
      const otherMotorVa = values.numberOrNull('largest-motor') ?? 0;
      return standardServiceLoad({ ...home, otherMotorVa }, rules, cookingDemand.rows);
    }
    case 'optional':
      return optionalNewServiceLoad(home, rules);
    default: {
      const addsHeatingOrCooling = values.word('adds-heating-or-cooling') === 'yes';
      return existingServiceLoad({ ...home, addsHeatingOrCooling }, rules);
    }
  }
}

function homeOf(values: Values): DwellingLoads {
  const loads = (key: string) => values.list(key).map(({ name, value }) => ({ name, va: value }));
  return {
    floorAreaFt2: values.number('area'),
    smallApplianceCircuits: values.number('kitchen-circuits'),
    laundryCircuits: values.number('laundry-circuits'),
    cooking: loads('cooking'),
    dryerVa: values.numberOrNull('dryer'),
    appliances: [
      ...loads('appliances'),
      ...loads('whole-appliances').map((one) => ({ ...one, fastened: false })),
    ],
    chargers: loads('chargers'),
    heatingCooling: heatingCoolingOf(values),
    volts: Number(values.word('volts')),
  };
}

function heatingCoolingOf(values: Values): HeatingCooling {
  const given = (key: string) => values.numberOrNull(key) ?? undefined;
  const cooling = given('cooling');
  const units = values.number('cooling-units');
  return {
    coolingVa: cooling,
    coolingMotorVa: cooling === undefined ? undefined : cooling / units,
    heatPumpVa: given('heat-pump'),
    supplementalVa: given('backup-heat'),
    supplementalWithCompressor: values.word('backup-kept-apart') === 'no',
    spaceHeatVa: given('electric-heat'),
    spaceHeatControls: given('heat-controls'),
  };
}
