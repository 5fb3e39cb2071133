import type { Advice } from '../advice/advice';
import type { Home } from '../home/home';
import type { AwakeHours } from '../home/loads/awake';
import type { LoadId } from '../home/loads/load-id';
import { wasTold } from '../home/loads/load-told';
import { hasGenerator, isSource, isWired } from '../kinds/ask-traits';
import type { RouteTitle } from '../kinds/route-title';
import { traitsOf } from '../kinds/route-traits';
import { carriesAllMust } from '../routes/must-carried';
import type { Lasting, Route } from '../routes/route';
import { bridges, type TransferTime } from '../routes/transfer-time';
import type { WhyLeftOut } from '../routes/why-left-out';
import { type Failed, failedBefore } from './cautions/failed-before';
import type { FuelToStore } from './fuel/fuel-to-store';
import { nightWithoutHeat } from './night-without-heat';
import { type TooCold, tooColdForPump } from './too-cold-for-pump';

/** Something the advised route will not do. */
export type WillNot =
  | {
      readonly code: 'left-out';
      readonly load: LoadId;
      readonly why: WhyLeftOut;
      /** Why it was to keep running; null where it need not. */
      readonly must: 'told' | 'counted' | null;
    }
  | { readonly code: 'not-so-long'; readonly lasting: Lasting }
  | ({ readonly code: 'too-cold-for-pump' } & TooCold)
  | { readonly code: 'no-heat-at-night'; readonly awake: AwakeHours }
  | { readonly code: 'no-second-source' }
  | { readonly code: 'dark-gap'; readonly transferTime: TransferTime }
  | { readonly code: 'failed-before'; readonly failed: Failed }
  | { readonly code: 'not-quiet' }
  | { readonly code: 'not-clean-air' }
  /** Without wiring only what has a plug runs; said of the light and the pumps, which people take for wired in. */
  | { readonly code: 'cords-only'; readonly lights: boolean; readonly sumpPump: boolean }
  /** What would do more: fuel still to be stored, gal, or another route. */
  | { readonly code: 'whole-job-once-stored'; readonly moreGallons: number }
  | { readonly code: 'whole-job-elsewhere'; readonly called: RouteTitle };

export function willNotDo(home: Home, advice: Advice, fuel: FuelToStore | null): WillNot[] {
  const { route } = advice;
  const power = isSource(traitsOf[route.kind]);
  return [
    ...leftOut(home, route),
    ...(route.lasting.reachesGoal
      ? []
      : [{ code: 'not-so-long' as const, lasting: route.lasting }]),
    ...lessHeat(home, route),
    ...(home.lifeSupport === 'no' ? [] : [{ code: 'no-second-source' as const }]),
    ...(power ? darkGap(home, route) : []),
    ...failedBefore(home, route).map((failed) => ({ code: 'failed-before' as const, failed })),
    ...againstAims(home, route),
    ...(power && !isWired(traitsOf[route.kind]) ? [byCordOnly(route)] : []),
    ...forWholeJob(home, advice, fuel),
  ];
}

/** Each load once; only what was told is said to have been told. */
function leftOut(home: Home, route: Route): WillNot[] {
  return [...new Map(route.leavesOut.map((one) => [one.load, one])).values()].map(
    ({ load: id, why, must }) => {
      const load = home.loads.find((one) => one.id === id);
      const told = load !== undefined && wasTold(home.facts, load);
      return { code: 'left-out', load: id, why, must: must ? (told ? 'told' : 'counted') : null };
    },
  );
}

function lessHeat(home: Home, route: Route): WillNot[] {
  const cold = tooColdForPump(home, route);
  const awake = nightWithoutHeat(home, route);
  return [
    ...(cold === null ? [] : [{ code: 'too-cold-for-pump' as const, ...cold }]),
    ...(awake === null ? [] : [{ code: 'no-heat-at-night' as const, awake }]),
  ];
}

function darkGap({ facts }: Home, { transferTime }: Route): WillNot[] {
  const unwanted = facts.is('goal-gap', 'no-blink', 'minute') && !bridges(transferTime);
  return unwanted ? [{ code: 'dark-gap', transferTime }] : [];
}

/** Other aims told that a generator works against. */
function againstAims({ facts }: Home, route: Route): WillNot[] {
  if (!facts.told('other-aims') || !hasGenerator(traitsOf[route.kind])) return [];
  return [
    ...(facts.has('other-aims', 'quiet') ? [{ code: 'not-quiet' as const }] : []),
    ...(facts.has('other-aims', 'clean-air') ? [{ code: 'not-clean-air' as const }] : []),
  ];
}

function byCordOnly(route: Route): WillNot {
  const carried = (id: LoadId) => route.carries.includes(id);
  return {
    code: 'cords-only',
    lights: carried('lights-led'),
    sumpPump: carried('sump') && !traitsOf[route.kind].oneJob,
  };
}

function forWholeJob(home: Home, advice: Advice, fuel: FuelToStore | null): WillNot[] {
  if (fuel?.reachesGoal === true && carriesAllMust(home, advice.route))
    return [{ code: 'whole-job-once-stored', moreGallons: fuel.moreGallons }];
  if (advice.wholeJob === null) return [];
  return [{ code: 'whole-job-elsewhere', called: advice.wholeJob.called }];
}
