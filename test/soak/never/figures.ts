import { formatQuantity } from '../../../src/quantity/format-quantity';
import { onceStored } from '../../../src/routes/fuel/once-stored';
import { sayFigure } from '../../../src/words/en/say-figure';
import type { Held } from '../seen';

/** "$1,770", "28 h", "3 days 4 h", "30 min", "21 gal". */
const FIGURE = /\$\d+(,\d{3})*(\.\d\d)?|\d+(,\d{3})*(\.\d+)? (h|min|gal|days?)\b/g;

/** Every dollar, hour and gallon of the first page stands in the details too, or is the fuel the plan has at hand. */
export const frontInDetails: Held = ({ plan, front, text }) => {
  if (plan.undecided.length > 0) return null;
  const details = text.slice(front.length);
  const atHand = plan.advice.route.fuel?.atHand;
  const known = new Set<string>(details.match(FIGURE));
  if (atHand) known.add(formatQuantity(atHand.value, 'gal'));
  const missing = [...new Set<string>(front.match(FIGURE))].filter((one) => !known.has(one));
  return missing.map((figure) => `${figure} stands on the first page alone`);
};

/** Price and hours of the route advised, and the goal, are the plan's own wherever the first page says them. */
export const frontAsPlanned: Held = ({ plan, front }) => {
  if (plan.undecided.length > 0) return null;
  const { route } = plan.advice;
  const goal = formatQuantity(plan.home.goalHours.value, 'h');
  const goals = [
    ...front.matchAll(/You asked for (.+?)(?:; the careful count falls short)?\.(?!\d)/g),
    ...front.matchAll(/(?:it|It) does not reach the (.+?) you asked for/g),
  ];
  const price = sayFigure(route.costUsd);
  const hours = /- How long(?: for the rest)?: about (.+?), careful count (.+?)\./.exec(front);
  const likely = route.lasting.hours?.value;
  return [
    ...goals.filter(([, said]) => said !== goal).map(([said]) => `goal ${goal}, but "${said}"`),
    ...(front.includes(price) ||
    (route.costUsd.value === 0 && front.includes('What to buy: nothing'))
      ? []
      : [`the price ${price} is not on the first page`]),
    ...(hours !== null && hours[1] !== inWords(likely!)
      ? [`lasts ${likely} h, but "${hours[0]}"`]
      : []),
  ];
};

/** The hours with the cans filled are the same wherever they are said. */
export const fuelOnce: Held = ({ plan }) => {
  const stored = onceStored(plan.home, plan.advice.route)?.route.lasting.hours;
  const then = plan.fuelToStore?.thenHours;
  if (!stored || !then) return null;
  return Math.abs(stored.value - then) <= 0.5 ? [] : [`${stored.value} h, but ${then} h`];
};

/** The parts of every route come to its price. */
export const partsAddUp: Held = ({ plan }) =>
  plan.routes.flatMap(({ kind, parts, costUsd }) => {
    const sum = parts.reduce((dollars, part) => dollars + part.costUsd.value, 0);
    return Math.abs(sum - costUsd.value) < 0.01
      ? []
      : [`${kind}: parts of $${sum}, price of $${costUsd.value}`];
  });

/** The plan file and the plan have the same price and hours for the route advised. */
export const fileAsPlanned: Held = ({ plan, data }) => {
  const route = data.routes.find((one) => one.kind === data.advised.route)!;
  const hours = plan.advice.route.lasting.hours;
  const near = (a: number, b: number) => Math.abs(a - b) <= 0.001 * Math.abs(b);
  const said = route.lastsHours;
  return [
    ...(near(route.cost.value, plan.advice.route.costUsd.value) ? [] : ['another price']),
    ...((typeof said === 'string') === (hours === null) ? [] : ['another end']),
    ...(typeof said === 'string' || near(said.value, hours!.value) ? [] : ['other hours']),
  ];
};

/** Whole hours, and whole minutes below one; none is 0 h. */
const inWords = (hours: number): string =>
  hours > 0 && hours < 1 ? `${Math.round(60 * hours)} min` : formatQuantity(Math.round(hours), 'h');
