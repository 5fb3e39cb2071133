import type { LengthFrom, WireChoice, WireRunId } from '../../../plan/electrical/wires';

const runs: Readonly<Record<WireRunId, string>> = {
  'inlet-to-panel': 'Inlet to panel',
  'battery-to-panel': 'Battery to panel',
  'panel-to-pump': 'Panel to water pump',
};

const reasons: Readonly<Record<WireChoice['because'], string>> = {
  ampacity: 'ampacity',
  'voltage-drop': 'voltage drop',
  'no-wire': 'no wire of the table does it at this distance',
};

/** "Inlet to panel". */
export const wireRunName = (run: WireRunId): string => runs[run];

/** What decides the size of a wire. */
export const wireBecause = (because: WireChoice['because']): string => reasons[because];

/** How the length of a run is known. */
export function sayLengthFrom(lengthFrom: LengthFrom): string {
  switch (lengthFrom.code) {
    case 'paced-off':
      return 'paced off by the household';
    case 'assumed':
      return 'assumed';
    case 'well-depth':
      return `depth ${lengthFrom.depthTold ? 'as told' : 'assumed'} + ${lengthFrom.runFt} ft assumed from panel to well head`;
  }
}
