import type { Tariff } from '../../bill/tariff/tariff';
import type { Home } from '../../home/home';
import type { Answers } from '../../interview/answers';
import type { Route } from '../../routes/route';
import type { CodeEdition } from '../../tables/electrical/service-load-rules';
import { contradictions } from '../contradictions';
import type { Contradiction } from '../contradictions/contradiction';
import type { Connection } from './connection';
import { connectionsOf } from './connections';
import { generatorChargingPoint } from './generator-charging-point';
import { type HighEndShortfall, highEndShortfalls } from './high-end';
import { calculatedVa, type LoadCalculation, loadCalculation } from './load-calculation';
import { type MeteredCheck, meteredCheck } from './metered';
import { neutralLoadPoint } from './neutral-load-point';
import { largestLoadPoint, neutralPoints } from './neutral-points';
import { type PanelFit, panelFit } from './panel-fit';
import { type Scope, scopeOf } from './scope';
import { type ServiceFact, serviceFacts } from './service-facts';
import { sitingOf } from './siting';
import type { SitingPoint } from './siting-point';
import { type SolarRowPoint, solarRowPoints } from './solar-row-points';
import { type RouteStarting, startingOf } from './starting';
import type { TransferPoint } from './transfer-point';
import { transferTimePoints } from './transfer-time-points';
import { type WayOut, waysOut } from './way-out';
import { type WireRun, wireRuns } from './wires';

/** Code editions that differ for this work, to ask the inspector about; `words` says how. */
const editionNotes: readonly CodeEdition[] = [2017, 2020, 2023, 2026];

/** The electrical half of a plan. Planning figures: code in force, inspector and a licensed electrician decide. */
export interface Electrical {
  readonly service: readonly ServiceFact[];
  readonly toSettle: readonly Contradiction[];
  readonly loadCalculation: LoadCalculation;
  readonly metered: MeteredCheck;
  readonly panelFit: PanelFit;
  readonly waysOut: readonly WayOut[];
  readonly starting: readonly RouteStarting[];
  /** Where the high end of a need is more than a route gives. */
  readonly highEnd: readonly HighEndShortfall[];
  readonly connections: readonly Connection[];
  readonly transferPoints: readonly TransferPoint[];
  /** Solar panels in a row against the cold; empty where there are none. */
  readonly solarRow: readonly SolarRowPoint[];
  readonly wires: readonly WireRun[];
  readonly editionNotes: readonly CodeEdition[];
  readonly siting: readonly SitingPoint[];
  readonly scope: Scope;
}

/** Service, starting, transfer, wires, siting and scope for the route advised, `route`, among `routes`. */
export function electricalOf(
  home: Home,
  answers: Answers,
  given: { route: Route; routes: readonly Route[]; ownTariff?: Tariff | null },
): Electrical {
  const { route, routes } = given;
  const load = loadCalculation(home);
  const fit = panelFit(home, route);
  const points = [
    neutralLoadPoint(home, route),
    largestLoadPoint(home, route),
    generatorChargingPoint(home, route),
  ];
  return {
    service: serviceFacts(home),
    toSettle: contradictions(home, answers, given.ownTariff),
    loadCalculation: load,
    metered: meteredCheck(home, route),
    panelFit: fit,
    waysOut: waysOut(home, route, { fit, load: load.verdict }),
    starting: startingOf(home, routes),
    highEnd: highEndShortfalls(home, routes),
    connections: connectionsOf(home, { route, calculatedVa: calculatedVa(load) }),
    transferPoints: [
      ...transferTimePoints(home, route.transferTime),
      ...neutralPoints(home, route),
      ...points.filter((point) => point !== null),
    ],
    solarRow: solarRowPoints(home, route),
    wires: wireRuns(home, route),
    editionNotes,
    siting: sitingOf(home, route),
    scope: scopeOf(home, route),
  };
}
