import { sayEdition } from './edition-notes';
import { connectionName, sayCapacity, sayConnection } from './say-connection';
import { busbarWay, codeSection, sayPanelNote, sayPanelTrap } from './say-panel';
import { saySiting } from './say-siting';
import { saySolarRow } from './say-solar-row';
import { sayTransferPoint } from './say-transfer';
import { sayWayOut } from './say-way-out';

/** What an electrician reads, from codes and figures of the plan. */
export const forElectrician = {
  busbarWay,
  codeSection,
  panelTrap: sayPanelTrap,
  panelNote: sayPanelNote,
  wayOut: sayWayOut,
  connectionName,
  connection: sayConnection,
  capacity: sayCapacity,
  transferPoint: sayTransferPoint,
  solarRow: saySolarRow,
  edition: sayEdition,
  siting: saySiting,
};
