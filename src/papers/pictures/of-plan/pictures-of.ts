import { STUDY_YEARS } from '../../../plan/money/plan-money';
import { distances } from '../../../plan/on-the-day/distances';
import { yearTasks } from '../../../plan/on-the-day/year-tasks';
import type { Plan } from '../../../plan/plan';
import type { Words } from '../../../words/words';
import { shortReading } from '../../sheets/reading';
import { costsPicture } from '../costs-over-years';
import { dollarsPicture } from '../dollars-buy';
import { hardCasePicture } from '../hard-case';
import { ladderPicture } from '../ladder-gauge';
import { oddsPicture } from '../odds-by-length';
import type { Picture } from '../picture';
import { sitingPicture } from '../siting-distances';
import { yearPicture } from '../the-year';
import { diagramOf } from './diagram-of';

/** What a picture shows; the same names stand on the command line. */
export type PictureId =
  | 'dollars'
  | 'hard-case'
  | 'odds'
  | 'ladder'
  | 'costs'
  | 'diagram'
  | 'siting'
  | 'year';

/** The pictures of a plan, in the order of reading; one that would be empty is left out. */
export function picturesOf(plan: Plan, words: Words): ReadonlyMap<PictureId, Picture> {
  const made: [PictureId, Picture | null][] = [
    ['dollars', dollars(plan, words)],
    ['ladder', ladder(plan, words)],
    ['hard-case', hardCase(plan, words)],
    ['odds', odds(plan, words)],
    ['costs', costs(plan, words)],
    ['diagram', diagramOf(plan, words)],
    ['siting', siting(plan, words)],
    ['year', year(plan, words)],
  ];
  return new Map(
    made.flatMap(([id, picture]) => (picture === null ? [] : [[id, picture] as const])),
  );
}

const rideOf = ({ rideThrough, advice }: Plan) =>
  rideThrough.routes.find((one) => one.kind === advice.route.kind) ?? null;

function hardCase(plan: Plan, words: Words): Picture | null {
  const badCase = rideOf(plan)?.badCase ?? null;
  if (badCase === null || badCase.hours.length === 0) return null;
  const full = {
    kwh: plan.advice.route.usableKwh,
    fuel: Math.max(0, ...badCase.hours.map((hour) => hour.fuelLeft ?? 0)),
  };
  const percent = (part: number, of: number) => (of > 0 ? Math.min(100, (100 * part) / of) : null);
  const span = (hours: number) => words.quantity(hours, 'h');
  return hardCasePicture(
    badCase.hours.map((hour) => ({
      wantedKw: hour.loadKw,
      servedKw: hour.servedKw,
      sunKw: hour.sunKw,
      leftPercent:
        full.kwh !== null
          ? percent(hour.chargeKwh, full.kwh)
          : hour.fuelLeft === null
            ? null
            : percent(hour.fuelLeft, full.fuel),
    })),
    words.sheets.pictures.hardCase(
      span(badCase.hours.length),
      badCase.endsAfter === null ? null : span(badCase.endsAfter),
      badCase.storedGal === undefined ? null : words.quantity(badCase.storedGal, 'gal'),
    ),
  );
}

function odds(plan: Plan, words: Words): Picture | null {
  const ride = rideOf(plan);
  const must = ride?.odds.must ?? [];
  if (ride === null || must.length === 0) return null;
  const { goalHours, season } = plan.rideThrough;
  const stored = ride.onceStored && {
    gallons: words.quantity(ride.onceStored.gallons, 'gal'),
    inHundred: 100 * ride.onceStored.share,
  };
  return oddsPicture(
    must.map(({ hours, season: share }) => ({
      hours,
      likely: 100 * share,
      careful: hours === goalHours ? 100 * ride.carefulShare : null,
    })),
    { goalHours, words: words.sheets.pictures.odds(season, stored) },
  );
}

function ladder(plan: Plan, words: Words): Picture | null {
  if (plan.advice.route.carries.length === 0) return null;
  return ladderPicture(
    plan.ladder.map((step) => ({
      atPercent: step.atPercent,
      reads: shortReading(plan, step.atPercent, words),
      off: [
        ...step.switchOff.map((id) => words.inSentence(words.loadName(plan.home, id))),
        ...step.lessens.map((id) =>
          words.household.ladder.less(words.inSentence(words.loadName(plan.home, id))),
        ),
      ],
    })),
    words.sheets.pictures.ladder,
  );
}

/** The list that nothing beats, lettered from the cheapest; how far each carries is the share of what must run times its odds. */
function dollars({ advice, rideThrough }: Plan, words: Words): Picture | null {
  const { list, advised, reason } = advice;
  const own = advised === null ? null : list[advised]!;
  if (list.length < 2) return null;
  return dollarsPicture(
    list.map((line, i) => ({
      letter: 'ABCDEFGH'[i]!,
      costUsd: line.usd,
      inHundred: line.value.share,
      advised: i === advised,
    })),
    {
      budgetUsd: reason.budgetUsd,
      words: words.sheets.pictures.dollars(
        words.quantity(rideThrough.goalHours, 'h'),
        own !== null &&
          own.carried.carried === own.carried.of &&
          list.some((line) => line.value.share > own.value.share && line.usd < own.usd),
      ),
    },
  );
}

/** The advised route and at most two beside it, as A, B and C. */
function costs(plan: Plan, words: Words): Picture | null {
  const kinds = [plan.advice.route, ...plan.advice.beside].slice(0, 3).map(({ kind }) => kind);
  const lines = kinds.flatMap((kind, i) => {
    const one = plan.money.routes.find((route) => route.kind === kind);
    if (one === undefined) return [];
    let sum = 0;
    const usdByYear = one.money.byCase.likely.flow.map((usd) => (sum -= usd));
    return [{ letter: 'ABC'[i]!, title: words.routeTitle(one.called), usdByYear }];
  });
  return lines.length === 0 ? null : costsPicture(lines, words.sheets.pictures.costs(STUDY_YEARS));
}

function siting({ advice: { route }, home }: Plan, words: Words): Picture | null {
  const its = words.sheets.pictures.siting;
  const all = distances(home, route);
  return all.length === 0
    ? null
    : sitingPicture(
        all.map(({ id, toldFeet, leastFeet }) => ({ name: its.names[id], toldFeet, leastFeet })),
        its,
      );
}

function year(plan: Plan, words: Words): Picture {
  const tasks = yearTasks(plan.home, plan.advice.route);
  return yearPicture(
    tasks.map(({ id, months }) => ({ name: words.sheets.yearTasks[id].name, months })),
    {
      keepPercent: keepPercent(plan),
      words: { ...words.sheets.pictures.year, months: words.shortMonths },
    },
  );
}

/** Charge to keep by month, %; empty where no battery keeps one, or where not even a full one is enough in any month. */
function keepPercent(plan: Plan): (number | null)[] {
  const shares = rideOf(plan)?.keepByMonth ?? [];
  return shares.every((share) => share === null)
    ? []
    : shares.map((share) => (share === null ? null : 100 * share));
}
