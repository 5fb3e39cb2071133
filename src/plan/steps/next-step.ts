import type { OneRoom } from '../../advice/ways-on/ways-on';
import type { RouteTitle } from '../../kinds/route-title';
import type { Part } from '../../routes/route';
import type { ConditionCode } from '../../routes/stops/stop-codes';
import type { Who } from '../../rules/rule';
import type { Contradiction } from '../contradictions/contradiction';
import type { HighEndShortfall } from '../electrical/high-end';
import type { FuelToStore } from '../fuel/fuel-to-store';
import type { AddOn } from './add-ons';

/** Something to do next: what it is about, with what it hangs on, and who does it. */
export type NextStep = Step & {
  readonly who: Who;
  /** Words of the household that belong to it, said back as they are. */
  readonly told?: string;
};

/** What a step is about, for whoever picks among them. */
export type StepId = Step['id'];

export type PlainStep =
  | 'panel'
  | 'quotes'
  | 'ask-association'
  | 'grid-approval'
  | 'gas-supply'
  | 'order'
  | 'tell-insurer';

type Step =
  | { readonly id: PlainStep }
  /** `careful`: nobody said whether somebody depends on a device. */
  | { readonly id: 'agree-on-device' | 'on-the-lists'; readonly careful: boolean }
  | { readonly id: 'settle'; readonly found: Contradiction }
  /** Carbon monoxide alarms that hang here already. */
  | { readonly id: 'alarms'; readonly have: 'all' | 'some' | 'none' }
  | { readonly id: 'store-water'; readonly animals: boolean }
  | {
      readonly id: 'find-out';
      readonly question: string;
      readonly says: string;
      readonly how: string;
    }
  | { readonly id: 'find-out-first'; readonly conditions: readonly ConditionCode[] }
  /**
   * The whole home counts, as they said or because nobody has asked; one room within their money would do the whole job, or is kept warm
   * or cool where the home is not.
   */
  | { readonly id: 'one-room'; readonly way: OneRoom; readonly asked: boolean }
  /** What living thriftily takes stands on the same list, $; `waitsUsd`: what more money must be there first, $, 0 for none. */
  | {
      readonly id: 'buy';
      readonly parts: readonly Part[];
      /** For the one room that the sums count on. */
      readonly roomUnits: readonly AddOn[];
      readonly thriftUsd: number;
      readonly waitsUsd: number;
    }
  /** What the money of now buys of it, where the rest waits. */
  | { readonly id: 'buy-first'; readonly parts: readonly Part[]; readonly usd: number }
  /** `asked`: the permit office has been asked. */
  | { readonly id: 'permits'; readonly asked: boolean }
  /** At the high end it is more than the route gives. */
  | {
      readonly id: 'measure';
      readonly shortfalls: readonly HighEndShortfall[];
      readonly called: RouteTitle;
    }
  | { readonly id: 'fuel'; readonly fuel: FuelToStore }
  | { readonly id: 'price-beside'; readonly addOns: readonly AddOn[] }
  | { readonly id: 'rehearse'; readonly lifeSupport: boolean };
