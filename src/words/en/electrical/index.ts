import { sayEdition } from './edition-notes';
import { connectionName, sayCapacity, sayConnection } from './say-connection';
import { sayElectricianPoint } from './say-electrician-point';
import {
  loadMethod,
  sayDwellingAssumption,
  sayEditionNote,
  sayLoadCalculation,
  sayLoadNote,
} from './say-load-calculation';
import { sayLoadLine } from './say-load-line';
import { sayMetered } from './say-metered';
import { busbarWay, codeSection, sayPanelNote, sayPanelTrap } from './say-panel';
import {
  confirmHere,
  confirmLocally,
  householdMay,
  sayCircuit,
  sayCircuitShort,
  sayPurpose,
  sayQuotePoint,
  sayRequirement,
  saySiteQuestion,
} from './say-scope';
import { sayServiceFact, sayServiceTogether } from './say-service';
import { saySiting } from './say-siting';
import { saySolarRow } from './say-solar-row';
import { sayCure, sayStartLimit } from './say-starting';
import { sayTransferPoint } from './say-transfer';
import { sayWayOut } from './say-way-out';
import { sayLengthFrom, wireBecause, wireRunName } from './say-wire';

/** What an electrician reads, from codes and figures of the plan. */
export const forElectrician = {
  point: sayElectricianPoint,
  serviceFact: sayServiceFact,
  loadCalculation: sayLoadCalculation,
  loadMethod,
  loadNote: sayLoadNote,
  loadLine: sayLoadLine,
  editionNote: sayEditionNote,
  dwellingAssumption: sayDwellingAssumption,
  metered: sayMetered,
  busbarWay,
  codeSection,
  panelTrap: sayPanelTrap,
  panelNote: sayPanelNote,
  wayOut: sayWayOut,
  startLimit: sayStartLimit,
  cure: sayCure,
  connectionName,
  connection: sayConnection,
  capacity: sayCapacity,
  transferPoint: sayTransferPoint,
  solarRow: saySolarRow,
  wireRun: wireRunName,
  lengthFrom: sayLengthFrom,
  wireBecause,
  edition: sayEdition,
  siting: saySiting,
  purpose: sayPurpose,
  circuit: sayCircuit,
  requirement: sayRequirement,
  quotePoint: sayQuotePoint,
  siteQuestion: saySiteQuestion,
  householdMay,
  confirmHere,
  circuitShort: sayCircuitShort,
  serviceTogether: sayServiceTogether,
  confirmLocally,
};
