import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { stringify } from 'yaml';
import interview from '#compiled/questions.js';
import type { Answers } from '../../../src/interview/answers';
import { hasFixedBattery, hasGenerator } from '../../../src/kinds/ask-traits';
import { traitsOf } from '../../../src/kinds/route-traits';
import { electricalOf } from '../../../src/plan/electrical/electrical';
import { electricalData } from '../../../src/plan/electrical/electrical-data';
import { makePlan } from '../../../src/plan/make-plan';
import type { Plan } from '../../../src/plan/plan';
import { planData } from '../../../src/plan/plan-data';
import { planSchema } from '../../../src/plan/plan-schema';
import { planMarkdown } from '../../../src/plan/to-markdown';
import type { Route } from '../../../src/routes/route';
import { anyAnswers } from '../../rules/any-answers';

interface Seen {
  readonly answers: Answers;
  readonly plan: Plan;
  readonly text: string;
  readonly data: string;
}

/** Half answered wholly at random, half sound enough that wired routes are open. */
const HOMES = 120;
/** What is held here does not hang on the odds, so a few years of weather will do. */
const YEARS = 4;
const soundHome: Answers = {
  'home-kind': 'house',
  'home-tenure': 'own',
  'panel-signs': ['none'],
  'engine-place': 'open-20ft',
  'flood-history': 'yard',
};
let seen: Seen[] = [];

/** Whole plans of homes answered at random; the same seed gives the same homes. */
beforeAll(() => {
  seen = fc.sample(anyAnswers, { seed: 20261125, numRuns: HOMES }).map((drawn, n) => {
    const answers = n % 2 === 0 ? drawn : { ...drawn, ...soundHome };
    const plan = makePlan(interview, answers, '2026-11-25', YEARS);
    const data = planData(plan);
    expect(planSchema.safeParse(data).error?.issues ?? []).toEqual([]);
    return { answers, plan, text: planMarkdown(plan), data: stringify(data) };
  });
}, 120_000);

/** Holds for every plan; `holds` returns false for one it says nothing about, and some must not be like that. */
function always(holds: (of: Seen) => boolean, atLeast = 5): void {
  expect(seen.filter(holds).length).toBeGreaterThanOrEqual(atLeast);
}

const electricalFor = ({ plan, answers }: Seen, route: Route) =>
  electricalOf(plan.home, answers, { route, routes: plan.routes });

const open = (plan: Plan) => plan.routes.filter((route) => route.verdict !== 'cannot');

describe('no plan of any home', () => {
  test('lets an engine run where no open place 20 ft off was told, or at an apartment', () => {
    always(({ plan }) => {
      const { facts } = plan.home;
      const flat = facts.is('home-kind', 'apartment');
      if (!flat && facts.told('engine-place') && facts.is('engine-place', 'open-20ft'))
        return false;
      expect(open(plan).filter((route) => hasGenerator(traitsOf[route.kind]))).toEqual([]);
      return true;
    });
  });

  test('fixes a battery in a bedroom, a living space, an unknown place or a flooded basement', () => {
    always(({ plan }) => {
      const { facts } = plan.home;
      const wet = facts.is('battery-place', 'basement') && facts.is('flood-history', 'inside');
      const bad =
        !facts.told('battery-place') || facts.is('battery-place', 'bedroom-living', 'nowhere');
      if (!bad && !(wet && facts.told('flood-history'))) return false;
      expect(open(plan).filter((route) => hasFixedBattery(traitsOf[route.kind]))).toEqual([]);
      return true;
    });
  });

  test('calls life support complete without a second source, the supplier, the utility list and a leaving point', () => {
    always(({ plan, text }) => {
      if (plan.home.lifeSupport === 'no') return false;
      const { facts } = plan.home;
      expect(plan.leavingPoint.length).toBeGreaterThan(0);
      expect(plan.cautions.map((c) => c.id)).toContain('leaving-point');
      const team = (['supplier', 'power-company'] as const).every((who) =>
        facts.has('device-team', who),
      );
      const second = facts.told('second-source') && !facts.has('second-source', 'none');
      if (plan.home.lifeSupport === 'unknown' || !team || !second) {
        expect(plan.state).toBe('draft');
        if (!second) expect(plan.cautions.map((c) => c.id)).toContain('second-source');
        expect(text).toContain('DRAFT');
      }
      return true;
    });
  });

  test('says that no permit is needed, or advises a cord with two plugs', () => {
    always(({ text, data }) => {
      for (const paper of [text, data]) {
        expect(paper).not.toMatch(
          /\b(no|without a|without any) permits?\b|permits? (is|are) not (needed|required)/i,
        );
        expect(paper).not.toMatch(
          /\b(use|buy|make|get) (a |an )?(double-ended|two-plug|backfeed)/i,
        );
      }
      return true;
    }, HOMES);
  });

  test('plans a lithium battery in a cold place without saying that it must not be charged below freezing', () => {
    always((of) => {
      const { facts, site } = of.plan.home;
      const cold = facts.is('battery-place', 'outside-wall', 'shed-unheated', 'attached-garage');
      const routes = open(of.plan).filter((route) => hasFixedBattery(traitsOf[route.kind]));
      if (!cold || site.coldF >= 32 || routes.length === 0) return false;
      for (const route of routes) {
        const said = electricalFor(of, route).siting.map((point) => point.says);
        expect(said.join(' ')).toContain('must not be charged below 32 °F');
      }
      return true;
    });
  });

  test('feeds a house from an engine whose neutral is not known without an electrician first', () => {
    always((of) => {
      const kinds = ['engine-inlet', 'standby-engine', 'battery-engine'];
      const routes = open(of.plan).filter((route) => kinds.includes(route.kind));
      if (of.plan.home.facts.told('engine-neutral') || routes.length === 0) return false;
      for (const route of routes) {
        const points = electricalFor(of, route).transferPoints.join(' ');
        expect(points).toContain('until an electrician has found out');
        expect(route.verdict).toBe('works-if');
        expect(route.ifs.join(' ')).toContain('licensed electrician');
      }
      return true;
    });
  });

  test('draws a broken number for any route that could work, advised or not', () => {
    always((of) => {
      for (const route of open(of.plan)) {
        const data = stringify(electricalData(electricalFor(of, route)));
        expect(data).not.toMatch(/\bNaN\b|Infinity|\.inf\b|\.nan\b|undefined|\[object/);
      }
      return true;
    }, HOMES);
  });

  test('applies the electronics curve to a medical device', () => {
    always(({ plan }) => {
      if (plan.home.lifeSupport === 'no') return false;
      expect(plan.electrical.transferPoints.join(' ')).toContain(
        'No electronics curve is applied to a medical device',
      );
      return true;
    });
  });

  test('passes a service whose main breaker was not read', () => {
    always(({ plan }) => {
      if (plan.home.facts.told('main-amps')) return false;
      expect(plan.electrical.loadCalculation.verdict).toBe('not judged');
      expect(plan.electrical.panelFit.ways.every((way) => way.fits === 'ask')).toBe(true);
      return true;
    });
  });

  test('names the illness of a person to the electrician', () => {
    const names = /oxygen|ventilator|cpap|dialysis|suction|nebuli|feeding/i;
    always(({ plan }) => {
      if (!plan.home.loads.some((load) => names.test(load.name))) return false;
      expect(JSON.stringify(plan.electrical.scope.circuits)).not.toMatch(names);
      return true;
    });
  });

  test('holds a broken number or a word that is none', () => {
    always(({ text, data }) => {
      for (const paper of [text, data]) {
        expect(paper).not.toMatch(/\bNaN\b|Infinity|\.inf\b|\.nan\b|undefined|\[object/);
      }
      return true;
    }, HOMES);
  });
});
