import type {
  Connection,
  ConnectionCapacity,
  ConnectionWay,
} from '../../../plan/electrical/connection';
import { shown } from '../../../quantity/shown';

const ways: Readonly<Record<ConnectionWay, { readonly name: string; readonly says: string }>> = {
  cords: {
    name: 'cords, straight to each thing',
    says: 'Nothing wired in runs; each cord carries one heavy thing.',
  },
  'interlock-inlet': {
    name: 'inlet with an interlock',
    says: 'Only a kit listed for exactly this panel counts (702.5, 110.3(B)); the breaker it feeds back through needs a hold-down (408.36(D)).',
  },
  'manual-switch': {
    name: 'manual transfer switch',
    says: 'A box of its own, so it does not hang on the kind of panel.',
  },
  'automatic-whole-house': {
    name: 'automatic transfer of the whole house',
    says: 'The source must carry everything that is transferred.',
  },
  'sub-panel': {
    name: 'sub-panel for the chosen circuits',
    says: 'The circuits that must run move to a panel of their own.',
  },
  'load-management': {
    name: 'whole house with load management',
    says: 'A manager keeps the largest loads off.',
  },
  'at-the-meter': {
    name: 'device at the meter',
    says: 'Only where the utility allows it; nothing is done inside the panel.',
  },
  'charger-inlet': {
    name: 'inlet for a battery charger alone',
    says: 'The generator feeds only the charger, so its neutral never meets the house.',
  },
};

/** A way to connect by its name: "manual transfer switch". */
export const connectionName = (way: ConnectionWay): string => ways[way].name;

/** What the way is, or what stands against it. */
export function sayConnection({ way, against }: Pick<Connection, 'way' | 'against'>): string {
  switch (against) {
    case 'wiring-of-the-building':
      return 'The wiring belongs to the building.';
    case 'no-main-breaker':
      return 'This kind of panel has no main breaker an interlock could slide against.';
    case null:
      return ways[way].says;
  }
}

/** Whether the source is large enough by NEC 702.4: "9,500 VA for 4,200 VA meant to run at one time: enough". */
export function sayCapacity(capacity: ConnectionCapacity): string {
  switch (capacity.code) {
    case 'by-the-cord':
      return 'each cord and outlet carries what is plugged into it';
    case 'what-runs-at-one-time':
      return 'enough for all that is meant to run at one time (702.4(A)(1))';
    case 'manual':
      return `${kva(capacity.sourceVa)} for ${kva(capacity.chosenVa)} meant to run at one time: ${capacity.enough ? 'enough' : 'not enough, so fewer at a time'} (${capacity.section})`;
    case 'load-not-worked-out':
      return 'the whole calculated load, which is not worked out here (702.4(A)(2)(a))';
    case 'whole-load':
      return `the whole calculated load, ${kva(capacity.calculatedVa)} (702.4(A)(2)(a))`;
    case 'automatic':
      return `${kva(capacity.sourceVa)} for a calculated ${kva(capacity.calculatedVa)}: ${capacity.enough ? 'enough' : 'not enough without load management'} (${capacity.section})`;
    case 'what-the-manager-lets-on':
      return 'the most the manager lets on (702.4(A)(2)(b))';
    case 'managed':
      return `the manager must hold the house to ${kva(capacity.sourceVa)} (702.4(A)(2)(b))`;
    case 'held-to-the-generator':
      return 'the charger is held to what the generator gives';
  }
}

const kva = (va: number) => shown(va, 'VA');
