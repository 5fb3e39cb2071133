import { busbarRoom } from '../../../physics/busbar-room';
import { busbarRoutes } from '../../../tables/electrical/busbar-routes';
import { busbarWay } from '../../../words/en/electrical/say-panel';
import type { Calculation, Outcome } from '../calculation';
import { citedTables } from '../cited-table';
import type { Values } from '../values';

const positions = ['opposite-end', 'center-fed-end', 'elsewhere', 'not-known'] as const;

/** Room for a battery or solar breaker on a panel's busbar. */
export const busbar: Calculation = {
  name: 'busbar',
  about: 'largest power source the busbar of a panel has room for; a planning figure',
  inputs: [
    { kind: 'number', key: 'busbar', about: 'busbar rating', unit: 'A', from: 30, to: 1200 },
    { kind: 'number', key: 'main', about: 'main breaker', unit: 'A', from: 15, to: 1200 },
    {
      kind: 'choice',
      key: 'position',
      about: 'where the breaker of the source sits, seen from the main',
      choices: positions,
      assumed: 'not-known',
    },
    {
      kind: 'number',
      key: 'existing',
      about: '1.25 x the current of sources already there',
      unit: 'A',
      from: 0,
      to: 1200,
      assumed: 0,
    },
    {
      kind: 'number',
      key: 'breakers',
      about: 'sum of all breakers but the main, without the new one',
      unit: 'A',
      from: 0,
      to: 5000,
      optional: true,
    },
  ],
  source: citedTables(busbarRoutes),
  example: 'busbar=200 main=200 position=opposite-end',
  run: roomOf,
};

function roomOf(values: Values): Outcome {
  const position = values.word('position') as (typeof positions)[number];
  const [busbarAmps, mainAmps] = [values.number('busbar'), values.number('main')];
  if (mainAmps > busbarAmps) {
    return { ok: false, says: 'the main breaker is larger than the busbar: call an electrician.' };
  }
  const rooms = busbarRoom({
    busbarAmps,
    mainAmps,
    existingSourcesAt125Amps: values.number('existing'),
    position: position === 'not-known' ? null : position,
    otherBreakersAmps: values.numberOrNull('breakers'),
  });
  const best = rooms.reduce((a, b) => (b.sourceAt125Amps > a.sourceAt125Amps ? b : a));
  return {
    ok: true,
    steps: rooms.map((room) => ({
      label: busbarWay(room.route),
      formula: formulas[room.route],
      value: room.sourceAt125Amps,
      unit: 'A',
    })),
    results: [
      { label: 'largest 1.25 x source current', value: best.sourceAt125Amps, unit: 'A' },
      { label: 'continuous current of the source', value: best.continuousAmps, unit: 'A' },
      { label: 'by', value: busbarWay(best.route) },
    ],
    notes: [
      'The code edition in force, the label of the panel and a licensed electrician decide.',
      ...(position === 'not-known' ? ['The place is not known, so no 120% rule is used.'] : []),
    ],
  };
}

const formulas = {
  'any-place': 'busbar - main - existing',
  'opposite-end': '1.2 x busbar - main - existing',
  'center-fed': '1.2 x busbar - main - existing',
  'sum-of-breakers': 'busbar - sum of breakers',
};
