import { largestStart, type StartingLoad } from '../../../physics/largest-start';
import type { Calculation, Outcome } from '../calculation';
import type { Values } from '../values';

/** What a source must stand for a moment when the hardest loads start on top of the rest. */
export const largestStartOf: Calculation = {
  name: 'largest-start',
  about: 'what a source must stand when the hardest loads start on top of what runs',
  inputs: [
    { kind: 'list', key: 'running', about: 'each load while it runs', unit: 'VA', to: 100_000 },
    {
      kind: 'list',
      key: 'starting',
      about: 'whole draw of those that start hard, by the same names',
      unit: 'VA',
      to: 500_000,
      optional: true,
    },
    {
      kind: 'text',
      key: 'by-hand',
      about: 'names of loads that only a person starts; all others count as starting by themselves',
      pattern: /^[A-Za-z][^=]{0,200}$/,
      form: 'names with ";" between',
      optional: true,
    },
    {
      kind: 'choice',
      key: 'kept-apart',
      about: 'a control lets no two start together',
      choices: ['yes', 'no'],
      assumed: 'no',
    },
  ],
  source:
    'largest step and the next that can fall together with it: common practice, no source; apparent powers added as plain numbers, never too low',
  example: 'running="well 2400; fridge 180; lights 100" starting="well 12000; fridge 1000"',
  run: startOf,
};

function startOf(values: Values): Outcome {
  const running = values.list('running');
  const starting = values.list('starting');
  const byHand = (values.wordOrNull('by-hand') ?? '').split(';').map((n) => n.trim());
  const names = running.map((load) => load.name);
  const twice = names.find((name, i) => names.indexOf(name) !== i);
  if (twice !== undefined) return { ok: false, says: `"${twice}" stands twice among running.` };
  const strange = [...starting.map((load) => load.name), ...byHand.filter((name) => name !== '')];
  const unknown = strange.find((name) => !names.includes(name));
  if (unknown !== undefined) {
    return {
      ok: false,
      says: `"${unknown}" is not among running, which says ${names.join('; ')}.`,
    };
  }
  const loads: StartingLoad[] = running.map(({ name, value }) => ({
    id: name,
    runningVa: value,
    startingVa: starting.find((load) => load.name === name)?.value ?? value,
    selfStarting: !byHand.includes(name),
  }));
  const low = loads.find((load) => load.startingVa < load.runningVa);
  if (low !== undefined) {
    return {
      ok: false,
      says: `"${low.id}" starts with less than it runs with; give the whole draw.`,
    };
  }
  return shown(largestStart({ loads, startsKeptApart: values.word('kept-apart') === 'yes' }));
}

function shown(found: ReturnType<typeof largestStart>): Outcome {
  const { runningVa, peakVa, allSelfStartingVa, starting } = found;
  const together = starting.length > 0 ? starting.join(' and ') : 'nothing';
  return {
    ok: true,
    steps: [
      { label: 'running', formula: 'sum of all', value: runningVa, unit: 'VA' },
      {
        label: 'added by starting',
        formula: `${together}, starting less running`,
        value: peakVa - runningVa,
        unit: 'VA',
      },
    ],
    results: [
      { label: 'for a moment', value: peakVa, unit: 'VA' },
      { label: 'starting together', value: together },
      { label: 'all that start by themselves at once', value: allSelfStartingVa, unit: 'VA' },
    ],
    notes: ['After an automatic transfer all that start by themselves may try at once.'],
  };
}
