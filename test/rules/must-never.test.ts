import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Answers } from '../../src/interview/answers';
import type { RouteKind } from '../../src/kinds/route-kind';
import { findings } from '../../src/rules/find';
import type { Finding } from '../../src/rules/rule';
import { sayReason } from '../../src/words/en/reasons/say-reason';
import { says } from '../says';
import { anyAnswers, anyKinds } from './any-answers';
import { answeredHome } from './some-home';

// Written out here and not asked of the traits, so that a wrong trait is seen.
const fixedBatteryKinds: RouteKind[] = [
  'battery-circuits',
  'battery-whole',
  'battery-solar',
  'battery-engine',
];
const generatorKinds: RouteKind[] = [
  'engine-cords',
  'engine-inlet',
  'standby-engine',
  'battery-engine',
];
const wiredKinds: RouteKind[] = ['engine-inlet', 'standby-engine', ...fixedBatteryKinds];

type Home = ReturnType<typeof answeredHome>;
interface Seen {
  home: Home;
  kinds: readonly RouteKind[];
  found: Finding[];
  ids: string[];
}

const degrees = fc.integer({ min: -40, max: 115 });

/** 400 random homes with what the rules find there, made once for all that is asked of them; the seed is fixed. */
const seen: readonly (Seen & { readonly answers: Answers })[] = fc
  .sample(fc.tuple(anyAnswers, anyKinds, degrees, degrees), { seed: 20261125, numRuns: 400 })
  .map(([answers, kinds, coldF, hotF]) => {
    const home = answeredHome(answers, { coldF, hotF });
    const found = findings(home, kinds);
    return { answers, home, kinds, found, ids: found.map((one) => one.id) };
  });

/** Throws where one of these is missing: asked thousands of times, which `expect` is slow for. */
function told(ids: readonly string[], ...wanted: readonly string[]): void {
  const missing = wanted.filter((id) => !ids.includes(id));
  if (missing.length > 0) throw new Error(`not told: ${missing.join(', ')}`);
}

/** Holds for each of them. `holds` returns false for a home it says nothing about, and at least 10 must not be like that. */
function always(holds: (one: Seen) => boolean): void {
  let applied = 0;
  for (const one of seen) {
    try {
      if (holds(one)) applied += 1;
    } catch (fault) {
      const home = JSON.stringify([one.answers, one.kinds]);
      throw new Error(`with ${home}: ${(fault as Error).message}`, { cause: fault });
    }
  }
  expect(applied).toBeGreaterThanOrEqual(10);
}

const meets = (kinds: readonly RouteKind[], wanted: readonly RouteKind[]) =>
  kinds.some((kind) => wanted.includes(kind));

describe('on any home, whatever was answered', () => {
  it('a portable engine never goes without distance, alarm and no back-feeding', () => {
    always(({ home, kinds, ids }) => {
      const generator =
        meets(kinds, ['engine-cords', 'engine-inlet', 'battery-engine']) ||
        home.facts.has('own-sources', 'engine-portable') ||
        home.facts.open('own-sources');
      if (!generator) return false;
      told(ids, 'co-distance', 'co-alarm-first', 'no-backfeed', 'co-shutoff-no-substitute');
      return true;
    });
  });

  it('an engine is refused a place that is not known to be open and 20 ft off', () => {
    always(({ home, kinds, ids }) => {
      const { facts } = home;
      if (!meets(kinds, ['engine-cords', 'engine-inlet'])) return false;
      if (facts.told('engine-place') && facts.is('engine-place', 'open-20ft')) return false;
      if (!ids.includes('engine-too-close')) told(ids, 'porch-carport');
      return true;
    });
  });

  it('a fixed engine never goes without the caution on its exhaust', () => {
    always(({ kinds, ids }) => {
      if (meets(kinds, ['standby-engine'])) told(ids, 'fixed-engine-exhaust');
      if (meets(kinds, generatorKinds)) told(ids, 'co-alarm-first');
      return meets(kinds, ['standby-engine']);
    });
  });

  it('life support, or a doubt about it, is never called complete without a second way', () => {
    always(({ home, ids }) => {
      if (home.lifeSupport === 'no') return false;
      told(ids, 'leaving-point', 'list-is-notice');
      const { facts } = home;
      const second = facts.told('second-source') && !facts.has('second-source', 'none');
      if (!second) told(ids, 'second-source');
      if (!facts.told('device-safe-hours')) told(ids, 'safe-hours');
      return true;
    });
  });

  it('work on the house is never without permit, listing and "estimates only"', () => {
    always(({ kinds, ids }) => {
      if (!meets(kinds, wiredKinds)) return false;
      told(ids, 'permit-inspection', 'transfer-listed', 'estimates-only');
      return true;
    });
  });

  it('a two-plug cord or an outlet feed is always told to stop', () => {
    always(({ home, ids }) => {
      const { facts } = home;
      const feeds =
        facts.has('own-sources', 'backfeed-cord') || facts.is('engine-connect', 'wall-outlet');
      if (feeds) told(ids, 'backfeed-found');
      return feeds;
    });
  });

  it('a source of unknown neutral never feeds the house unchecked', () => {
    always(({ home, kinds, ids }) => {
      const feeds =
        meets(kinds, ['engine-inlet', 'battery-engine']) ||
        home.facts.is('engine-connect', 'inlet', 'wall-outlet');
      const unknown = feeds && home.facts.open('engine-neutral');
      if (unknown) told(ids, 'neutral-bond');
      return unknown;
    });
  });

  it('no battery is charged below freezing', () => {
    always(({ home, kinds, ids }) => {
      const { facts, site } = home;
      if (!meets(kinds, fixedBatteryKinds) || site.coldF > 32) return false;
      const warm =
        facts.told('battery-place') &&
        facts.is('battery-place', 'utility-room', 'basement', 'bedroom-living', 'nowhere');
      if (!warm) told(ids, 'no-freezing-charge');
      return !warm;
    });
  });

  it('heat and cooking that can kill are named whenever they are not ruled out', () => {
    always(({ home, ids }) => {
      const { facts } = home;
      if (!facts.told('heat-second') || facts.is('heat-second', 'unvented', 'oven-or-grill')) {
        told(ids, 'oven-heat');
      }
      if (!facts.told('cook-without') || facts.has('cook-without', 'charcoal-indoors')) {
        told(ids, 'charcoal-indoors');
      }
      return true;
    });
  });

  it('every finding has words, somebody to do it, and a reason', () => {
    always(({ found, ids }) => {
      const wrong = found.filter((one, i) => {
        const why = sayReason(one.because);
        const whole = why.endsWith('.') && !/NaN|undefined|null|Infinity/.test(why);
        return !(ids.indexOf(one.id) === i && says(one).length > 20 && one.who.length > 0 && whole);
      });
      if (wrong.length > 0) throw new Error(`wrong: ${wrong.map(({ id }) => id)}`);
      return true;
    });
  });

  it('preparation under discussion adds and hides nothing', () => {
    always(({ home, kinds, found }) => {
      const again = findings(home, [...kinds, 'preparation']);
      const [before, after] = [found, again].map((list) => list.map(({ id }) => id).join());
      if (after !== before) throw new Error(`found ${before}, then ${after}`);
      return true;
    });
  });
});
