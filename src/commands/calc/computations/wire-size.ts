import {
  breakerNeedAmps,
  DWELLING_SERVICE_SHARE,
  smallestWire,
  type WireSize,
} from '../../../physics/wire-size';
import { serviceConductors } from '../../../tables/electrical/service-conductors';
import {
  type TerminalColumn,
  type WireMetal,
  wireAmpacity,
  wireChoices,
} from '../../../tables/electrical/wire-ampacity';
import { wireReactance } from '../../../tables/electrical/wire-reactance';
import { wireResistance } from '../../../tables/electrical/wire-resistance';
import { wireBecause } from '../../../words/en/electrical/say-wire';
import type { Calculation, Outcome } from '../calculation';
import { citedTables } from '../cited-table';
import type { Values } from '../values';
import { wireSizeInputs } from './wire-size-inputs';

/** Thinnest wire for a breaker, a load and a distance. */
export const wireSize: Calculation = {
  name: 'wire-size',
  about: 'thinnest wire for a breaker, a load and a distance; a planning figure',
  inputs: wireSizeInputs,
  source: [wireAmpacity, serviceConductors, wireResistance, wireReactance]
    .map((table) => citedTables(table))
    .join('; '),
  example: 'breaker=20 amps=20 distance=100 volts=120 continuous=no column=75',
  run: sizeOf,
};

/** Terminals of more than this are marked for the 75 C column, A. NEC 110.14(C)(1). */
const SIXTY_COLUMN_AMPS = 100;
const serviceAmps = serviceConductors.rows.map((row) => row.ratingAmps);

function sizeOf(values: Values): Outcome {
  const service = values.word('use') === 'dwelling-service';
  // The conductors of a service carry its calculated load, which already holds its own margins.
  const continuous = !service && values.word('continuous') === 'yes';
  const [breakerAmps, loadAmps] = [values.number('breaker'), values.number('amps')];
  const needAmps = breakerNeedAmps({ loadAmps, continuous });
  const reason = refusal(values, needAmps);
  if (reason !== null) return { ok: false, says: reason };
  const metal = values.word('metal') as WireMetal;
  const column = columnFor(values, service);
  const ratingShare = service ? DWELLING_SERVICE_SHARE : 1;
  const wire = smallestWire({
    options: wireChoices(metal, column),
    breakerAmps,
    loadAmps,
    continuous,
    oneWayFt: values.number('distance'),
    supplyVolts: values.number('volts'),
    maxDropPercent: values.number('most-drop'),
    ratingShare,
  });
  if (wire === null) return { ok: false, says: 'no wire in the table is thick enough for that.' };
  const load = continuous ? '1.25 x load' : 'load';
  const carried = service ? '83% of the rating (310.12)' : `the larger of breaker and ${load}`;
  return {
    ok: true,
    steps: [
      { label: 'breaker needed', formula: load, value: needAmps, unit: 'A' },
      {
        label: 'current to carry',
        formula: carried,
        value: ratingShare * Math.max(breakerAmps, needAmps),
        unit: 'A',
      },
      {
        label: 'ampacity',
        formula: `${wire.size}, ${metal}, ${column} C column`,
        value: wire.ampacityAmps,
        unit: 'A',
      },
      { label: 'voltage drop', formula: 'see wire-drop', value: wire.drop.percent, unit: '%' },
    ],
    results: [
      { label: 'thinnest wire', value: `${wire.size} ${metal}` },
      { label: 'decided by', value: wireBecause(wire.limitedBy) },
    ],
    notes: notesFor(values, { service, column, wire }),
  };
}

function refusal(values: Values, needAmps: number): string | null {
  const breakerAmps = values.number('breaker');
  if (breakerAmps < needAmps) {
    return `a breaker of ${breakerAmps} A is too small: this load needs ${Math.ceil(10 * needAmps) / 10} A or more.`;
  }
  if (values.word('use') !== 'dwelling-service') return null;
  const [from, to] = [serviceAmps[0]!, serviceAmps.at(-1)!];
  if (breakerAmps < from || breakerAmps > to) {
    return `the rule for the service of a dwelling (310.12) holds from ${from} A to ${to} A.`;
  }
  return values.wordOrNull('column') === '60'
    ? 'the rule for the service of a dwelling (310.12) is for terminals marked 75 C.'
    : null;
}

function columnFor(values: Values, service: boolean): TerminalColumn {
  const given = values.wordOrNull('column');
  if (given !== null) return Number(given) as TerminalColumn;
  return service || values.number('breaker') > SIXTY_COLUMN_AMPS ? 75 : 60;
}

function notesFor(
  values: Values,
  given: { service: boolean; column: TerminalColumn; wire: WireSize },
): string[] {
  const column =
    values.has('column') || given.service
      ? []
      : [
          `The ${given.column} C column is taken: 60 up to ${SIXTY_COLUMN_AMPS} A unless you say that every terminal is marked 75 C, 75 above (110.14(C)). NM cable always takes 60 (334.80).`,
        ];
  const service = given.service
    ? [
        '310.12 goes by the 75 C column, and only where these wires carry the whole dwelling. The load is the calculated one, not counted at 125%.',
      ]
    : [];
  return [
    ...column,
    ...service,
    'From 4 AWG up reactance is counted, as in steel conduit and at the worst power factor.',
    'No correction for heat or bundling. A licensed electrician decides the wire.',
  ];
}
