import { timesFigure } from '../../quantity/figure-arithmetic';
import type { Load } from '../home';
import { compressorStart, compressorWatts, tonsFromArea } from './compressor';
import { asFigure, type LoadContext } from './context';
import { rankOf } from './load-keys';
import { makeLoad } from './make-load';

/** Cooling, where it is not the heat pump already counted under heating. */
export function cooling(context: LoadContext): Load[] {
  const rank = rankOf(context.facts, ['cool']);
  switch (context.facts.value('cool-main')) {
    case 'central':
      return [central(context)];
    case 'room':
      return [roomCooler(context, 'room-ac')];
    case 'mini-split':
      return [roomCooler(context, 'mini-split')];
    case 'evaporative':
      return [
        makeLoad('evaporative-cooler', {
          rank,
          follows: 'heat',
          wired: true,
          restsOn: ['cool-main'],
        }),
      ];
    default:
      return [];
  }
}

function central(context: LoadContext): Load {
  const tons = asFigure(context, 'cool-tons', 'tons') ?? tonsFromArea(context);
  const watts = compressorWatts(context, 'cool-run-amps');
  return makeLoad('central-ac', {
    rank: rankOf(context.facts, ['cool']),
    follows: 'heat',
    climate: context.climate,
    count: tons,
    runningWatts: watts,
    startVa: compressorStart(context, {
      kind: 'cool-kind',
      startAmps: 'cool-start-amps',
      tons,
      watts,
    }),
    restsOn: ['cool-main', 'cool-tons', 'cool-run-amps', 'cool-start-amps'],
  });
}

function roomCooler(context: LoadContext, row: 'room-ac' | 'mini-split'): Load {
  const { facts } = context;
  const count = asFigure(context, 'room-cool-count', 'count') ?? undefined;
  const each = facts.told('room-cool-watts')
    ? asFigure(context, 'room-cool-watts', 'W', true)
    : null;
  const runningWatts =
    each === null
      ? undefined
      : timesFigure(
          each,
          { low: 0.6 * (count?.low ?? 1), likely: count?.value ?? 1, high: count?.high ?? 1 },
          {
            name: 'room-coolers-power',
            source: {
              kind: 'nameplate',
              is: 'label-times-count',
              from: [each],
            },
          },
        );
  const restsOn = ['cool-main', 'room-cool-watts', 'room-cool-count'] as const;
  return makeLoad(row, {
    rank: rankOf(facts, ['cool']),
    follows: row === 'mini-split' ? 'both' : 'heat',
    heatsBy: row === 'mini-split' ? 'pump' : undefined,
    climate: context.climate,
    count,
    runningWatts,
    restsOn,
  });
}
