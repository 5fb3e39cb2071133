import type { ChoiceId } from '#compiled/question-ids.js';
import type { HouseholdLoadId } from '../../tables/household-loads';
import type { Load } from '../home';
import { asFigure, type LoadContext } from './context';
import { everyDayOf } from './hours-told';
import { type LoadKey, rankOf } from './load-keys';
import { makeLoad } from './make-load';
import { stairLift } from './stair-lift';

const internetRows: Readonly<Partial<Record<ChoiceId<'internet-kind'>, HouseholdLoadId>>> = {
  'cable-fiber': 'modem-router',
  'fixed-wireless': 'fixed-wireless',
  satellite: 'satellite-internet',
};

const workRows: Readonly<Partial<Record<ChoiceId<'work-gear'>, readonly HouseholdLoadId[]>>> = {
  laptop: ['laptop'],
  desktop: ['desktop'],
  several: ['laptop', 'desktop'],
};

/** Lights, phones, internet, work, cooking, and what the house draws by itself. */
export function living(context: LoadContext): Load[] {
  const { facts } = context;
  const rank = (key: LoadKey) => rankOf(facts, [key]);
  const loads: Load[] = [];
  // The lights are settled by the ranking, the last question of this topic.
  if (facts.applies('must-run')) {
    loads.push(
      makeLoad('lights-led', {
        called: { code: 'lights' },
        rank: rank('lights'),
        restsOn: ['must-run'],
      }),
    );
    loads.push(
      makeLoad('phone-charging', {
        called: { code: 'phones' },
        rank: rank('phones'),
        restsOn: ['must-run'],
      }),
    );
    loads.push(
      makeLoad('house-standby', {
        called: { code: 'always-on' },
        rank: 'wait',
        wired: true,
        restsOn: [],
      }),
    );
    loads.push(makeLoad('microwave', { rank: rank('cooking'), restsOn: ['must-run'] }));
  }
  const kind = facts.choice('internet-kind');
  const internet = kind === null ? undefined : internetRows[kind];
  if (internet !== undefined) {
    loads.push(
      makeLoad(internet, {
        called: { code: 'internet' },
        rank: rank('internet'),
        restsOn: ['internet-kind'],
      }),
    );
  }
  loads.push(...work(context));
  if (facts.is('cook-main', 'electric')) {
    loads.push(makeLoad('range', { rank: 'wait', offInOutage: true, restsOn: ['cook-main'] }));
  }
  if (facts.has('access-lifts', 'garage-door')) {
    loads.push(makeLoad('garage-door', { rank: rank('garage-door'), restsOn: ['access-lifts'] }));
  }
  return [...loads, ...stairLift(context)];
}

function work(context: LoadContext): Load[] {
  const { facts } = context;
  const gear = facts.choice('work-gear');
  const rows = (gear !== null && workRows[gear]) || [];
  const hours = asFigure(context, 'work-hours', 'h');
  return rows.map((row) => {
    const load = makeLoad(row, {
      rank: rankOf(facts, ['work']),
      restsOn: ['work-gear', 'work-hours'],
    });
    return hours === null ? load : { ...load, kwhPerDay: everyDayOf(load, hours) };
  });
}
