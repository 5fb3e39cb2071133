import type { RouteKind } from '../../kinds/route-kind';
import type { RouteTitle } from '../../kinds/route-title';
import { givesPower } from './candidate';
import { isEnough } from './enough';
import type { Weighed } from './unbeaten';

/** Another that is enough as well, and why it is not the one advised. */
export interface OtherEnough {
  /**
   * thriftily: cheaper, and asks to live thriftily; less-fuel: cheaper, the same with fewer cans, for fewer outages;
   * as-usual: dearer, where the advised one gives no power and asks to live thriftily.
   */
  readonly standing: 'thriftily' | 'less-fuel' | 'as-usual';
  readonly kind: RouteKind;
  readonly called: RouteTitle;
  /** The likely price, with what its way of living costs, $. */
  readonly usd: number;
  /** How far its price is from that of the advised one, $. */
  readonly apartUsd: number;
  /** Outages of the goal's length in a hundred that it carries, and that the advised one does. */
  readonly odds: number;
  readonly advisedOdds: number;
}

/** So that "it costs least" is never said where something cheaper is enough too: at most one of each standing. */
export function otherEnough(all: readonly Weighed[], chosen: Weighed | null): OtherEnough[] {
  if (chosen === null || !isEnough(chosen)) return [];
  const enough = all.filter((one) => one !== chosen && isEnough(one));
  const cheaper = enough.filter(({ usd }) => usd < chosen.usd);
  const { way } = chosen.living;
  const found: [OtherEnough['standing'], Weighed | undefined][] = [
    ['thriftily', cheaper.find((one) => way === 'usual' && one.living.way === 'thrifty')],
    ['less-fuel', cheaper.find((one) => one.living.way === way)],
    ['as-usual', givesPower(chosen) ? undefined : enough.find((one) => one.living.way === 'usual')],
  ];
  return found.flatMap(([standing, one]) =>
    one === undefined ? [] : [standingBeside(chosen, one, standing)],
  );
}

function standingBeside(
  chosen: Weighed,
  one: Weighed,
  standing: OtherEnough['standing'],
): OtherEnough {
  const { kind, called } = one.sized.route;
  return {
    standing,
    kind,
    called,
    usd: one.usd,
    apartUsd: Math.abs(one.usd - chosen.usd),
    odds: one.value.odds,
    advisedOdds: chosen.value.odds,
  };
}
