import { traitsOf } from '../../kinds/route-traits';
import type { Plan } from '../../plan/plan';
import type { Finding } from '../../rules/rule';
import type { RuleId } from '../../tables/rules';
import type { Words } from '../../words/words';

/** So many fit, whole, on the first page of the sheet for the night beside when to leave. */
const FOR_THE_NIGHT = 4;

/** What can kill. */
const DEADLY = 5;

/** What somebody does on the night, though no shorter words for it would keep its remedy. */
const wholeOnTheNight: readonly RuleId[] = ['heart-pump', 'ventilator-bag', 'cylinder-hours'];

/**
 * The gravest of the front page on the sheet for the night, as far as somebody can act on it then: what is mended
 * beforehand stands on the family's sheet. Where nothing was told that could stand there, what kills in any home: a sheet
 * for the night never goes without.
 */
export function forTheNight(plan: Plan, words: Words): Finding[] {
  const deadly = plan.cautions.filter(({ severity }) => severity === DEADLY);
  const front = ofTheNight(plan, plan.frontCautions, words);
  return (front.length > 0 ? front : ofTheNight(plan, deadly, words)).slice(0, FOR_THE_NIGHT);
}

const ofTheNight = (plan: Plan, found: readonly Finding[], words: Words) =>
  found.filter(
    ({ id }) =>
      !isTheOrder(plan, id) &&
      (words.sheets.night[id] !== undefined || wholeOnTheNight.includes(id)),
  );

/** The order at the panel stands on the sheet as its steps, one by one. */
const isTheOrder = ({ advice }: Plan, id: RuleId) =>
  id === 'interlock-order' && traitsOf[advice.route.kind].connection === 'inlet';

/** Both sheets say with its hours when to leave with a device; the family's first says what a second way lacks. */
const isSaidOfTheDevice = ({ lifeFirst }: Plan, id: RuleId) =>
  (id === 'leaving-point' && lifeFirst !== null) ||
  (id === 'second-source' && lifeFirst?.told === true);

/** What else stands on the front page: to be put right before the night comes, so it stands on the family's sheet. */
export function putRightBefore(plan: Plan, words: Words): Finding[] {
  const night = forTheNight(plan, words);
  return plan.frontCautions.filter(
    (one) => !night.includes(one) && !isTheOrder(plan, one.id) && !isSaidOfTheDevice(plan, one.id),
  );
}
