import type { Advice } from '../advice/advice';
import type { PossibleIf } from '../advice/possible-if';
import type { CountsByKind } from '../advice/route-counts';
import type { BillCheck, Home, Load } from '../home/home';
import type { Cite } from '../quantity/cite';
import type { Route } from '../routes/route';
import type { Finding } from '../rules/rule';
import type { DangerTold } from './cautions/danger-told';
import type { Contradiction } from './contradictions/contradiction';
import type { Electrical } from './electrical/electrical';
import type { FuelToStore } from './fuel/fuel-to-store';
import type { Job } from './job';
import type { ComfortLost } from './ladder/comfort-lost';
import type { LadderStep } from './ladder/ladder';
import type { LeavingLine } from './leaving-point';
import type { LifeFirst } from './life-first';
import type { PlanMoney } from './money/plan-money';
import type { Outlook } from './outlook';
import type { HealthFirst } from './ride-through/health-first';
import type { RideThrough } from './ride-through/ride-through-of';
import type { AddOn } from './steps/add-ons';
import type { ElectricianFor, ElectricianPoint } from './steps/electrician-points';
import type { NextStep } from './steps/next-step';
import type { ToCall } from './steps/to-call';
import type { Assumption } from './sureness/assumptions';
import type { Undecided } from './sureness/floor-of-answers';
import type { GrownOld } from './sureness/grown-old';
import type { DraftReason } from './sureness/why-draft';
import type { ToFindOut } from './sureness/worth-finding-out';
import type { WaysOfLiving } from './ways/ways-of-living';
import type { ThingThere } from './what-is-there/thing';
import type { WillNot } from './will-not-do';

/** Everything a plan says, as data. The papers are made from it and add nothing. */
export interface Plan {
  readonly name: string;
  readonly asOf: string;
  /** Seed and number of the drawn weather years: the same answers give the same plan. */
  readonly seed: number;
  readonly weatherYears: number;
  /** `draft` while a question that matters most is unanswered, or life support has no second source. */
  readonly state: 'draft' | 'complete';
  readonly draftBecause: readonly DraftReason[];
  /** A danger told while the plan was made, before anything else; null when none was. */
  readonly danger: DangerTold | null;
  /** Questions never asked without which nothing is advised; empty once enough is answered. */
  readonly undecided: readonly Undecided[];
  /** The household was asked what must run, so the job is its own and not assumed. */
  readonly jobTold: boolean;
  readonly job: Job;
  readonly home: Home;
  readonly mustRun: readonly Load[];
  readonly billCheck: BillCheck;
  readonly outlook: Outlook;
  readonly routes: readonly Route[];
  /** What papers say of each of them beside. */
  readonly counts: CountsByKind;
  readonly advice: Advice;
  /** Routes closed by what could change, as if it had: nothing to buy. */
  readonly possibleIf: readonly PossibleIf[];
  readonly rideThrough: RideThrough;
  readonly money: PlanMoney;
  /** What comes before any purchase where life hangs on a device; null where none does. */
  readonly lifeFirst: LifeFirst | null;
  /** How long the devices alone are covered by the route advised; null where none was named. */
  readonly healthFirst: HealthFirst | null;
  /** What the household has already, with what makes it work in an outage. */
  readonly whatIsThere: readonly ThingThere[];
  /** Need less first: both ways of living, and what the routes shown make of them. */
  readonly waysOfLiving: WaysOfLiving;
  /** Heat and cooling the route advised does not carry, where that harms. */
  readonly comfortLost: ComfortLost;
  /** What the advised route will not do. */
  readonly willNotDo: readonly WillNot[];
  readonly cautions: readonly Finding[];
  /** Those that matter most to this home, for the first page and the night. */
  readonly frontCautions: readonly Finding[];
  /** Whether a licensed electrician is needed: for the route, for the home as it is, or for nothing in this plan. */
  readonly electricianFor: ElectricianFor;
  readonly toCall: ToCall;
  readonly electrician: readonly ElectricianPoint[];
  /** Load calculation, panel, starting, transfer, wires, siting and scope, with the questions to settle. */
  readonly electrical: Electrical;
  /** Answers that do not fit together, about equipment this plan neither buys nor lays beside: no step, and no draft for them. */
  readonly settleIfEver: readonly Contradiction[];
  /** Worth having beside the route advised, priced apart from it. */
  readonly addOns: readonly AddOn[];
  /** Fuel still to be stored for the goal; null when nothing is missing. */
  readonly fuelToStore: FuelToStore | null;
  readonly ladder: readonly LadderStep[];
  readonly toFindOut: readonly ToFindOut[];
  readonly assumptions: readonly Assumption[];
  readonly nextSteps: readonly NextStep[];
  /** When to go, whatever is still running. */
  readonly leavingPoint: readonly LeavingLine[];
  /** Prices that were to be looked at again before the day of the plan. */
  readonly grownOld: readonly GrownOld[];
  readonly sources: readonly Cite[];
}
