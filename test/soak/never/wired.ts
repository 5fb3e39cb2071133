import { stringify } from 'yaml';
import { hasGenerator, isWired } from '../../../src/kinds/ask-traits';
import { traitsOf } from '../../../src/kinds/route-traits';
import { electricalData } from '../../../src/papers/plan-file/electrical-data';
import { english } from '../../../src/words/en';
import { sayIf } from '../../../src/words/en/routes/say-if';
import { electricalFor, faultsIf, type Held, openRoutes } from '../seen';
import { BROKEN } from './papers';

/** A generator whose neutral is not known feeds no house before an electrician has found out. */
export const unknownNeutral: Held = (seen) => {
  const routes = openRoutes(seen).filter(
    ({ kind }) => hasGenerator(traitsOf[kind]) && isWired(traitsOf[kind]),
  );
  if (seen.plan.home.facts.told('engine-neutral') || routes.length === 0) return null;
  const bad = routes.filter((route) => {
    const points = electricalFor(seen, route).transferPoints.map((point) => point.code);
    return !(
      points.includes('generator-neutral-not-known') &&
      route.verdict === 'works-if' &&
      route.ifs.map(sayIf).join(' ').includes('licensed electrician')
    );
  });
  return faultsIf(
    bad.map((route) => route.kind),
    'the neutral is not settled first',
  );
};

/** Every route that could be bought has sound electrical figures, advised or not. */
export const electricalFigures: Held = (seen) =>
  faultsIf(
    openRoutes(seen)
      .filter((route) =>
        BROKEN.test(
          stringify(
            electricalData(
              { home: seen.plan.home, electrical: electricalFor(seen, route) },
              english,
            ),
          ),
        ),
      )
      .map((route) => route.kind),
    'a broken electrical figure',
  );

/** A service whose main breaker was not read is not passed. */
export const unreadMain: Held = ({ plan }) => {
  if (plan.home.facts.told('main-amps')) return null;
  const { loadCalculation, panelFit } = plan.electrical;
  return [
    ...(loadCalculation.verdict === 'not-judged' ? [] : ['the load calculation is judged']),
    ...(panelFit.ways.every((way) => way.fits === 'ask') ? [] : ['the panel is judged']),
  ];
};

/** What the electrician reads names no illness. */
export const noIllness: Held = ({ plan }) => {
  const illness = /oxygen|ventilator|cpap|dialysis|suction|nebuli|feeding/i;
  if (!plan.home.loads.some((load) => illness.test(english.called(load.called)))) return null;
  const { circuits } = plan.electrical.scope;
  const said = circuits.map(({ called }) => called && english.called(called));
  return illness.test(JSON.stringify([circuits, said]))
    ? ['an illness stands in the scope of work']
    : [];
};
