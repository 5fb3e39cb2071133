import { type WorkedLife, workedLife } from '../../bill/lifecycle/battery-wear';
import { type CostPart, costPart } from '../../bill/lifecycle/cost-part';
import type { Home } from '../../home/home';
import { isOwned } from '../../routes/costs';
import type { Part, Route } from '../../routes/route';

/** Class of equipment a quote for a route mostly pays for; its life and upkeep hold for the whole quote. */
const mainPartOf = (route: Route): Part =>
  route.parts.reduce((a, b) => (b.costUsd.value > a.costUsd.value ? b : a));

/**
 * The parts of a route with life, upkeep, noise and lead time; the household's own quote in place of them all.
 * `kwhOutPerYear`: what its battery gives a year between outages, which may shorten its life.
 */
export function costPartsOf(home: Home, route: Route, kwhOutPerYear = 0): CostPart[] {
  const quote = quoteFor(home, route);
  const fromTable = (part: Part) => costPartOf(home, route, part, kwhOutPerYear);
  if (quote === null) return route.parts.map(fromTable);
  const main = mainPartOf(route);
  const upkeep = route.parts.map(fromTable).map((part) => part.upkeepPerYear);
  const sum = (at: 'low' | 'likely' | 'high') => upkeep.reduce((total, u) => total + u[at], 0);
  return [
    {
      ...fromTable(main),
      called: { code: 'quoted', route: route.called },
      cost: { low: quote, likely: quote, high: quote },
      upkeepPerYear: { low: sum('low'), likely: sum('likely'), high: sum('high') },
      priceYear: Number(home.asOf.slice(0, 4)),
      quoted: true,
    },
  ];
}

/** The total of the household's quote, $, where it is for this kind of route. */
export function quoteFor({ facts }: Home, { kind }: Route): number | null {
  if (!facts.told('quote-kind') || facts.value('quote-kind') !== kind) return null;
  return facts.told('quote-total') ? facts.number('quote-total') : null;
}

/** How long the battery of a route lasts when it gives so much a year between outages; null without one that wears. */
export function batteryLife(route: Route, kwhOutPerYear: number): WorkedLife | null {
  const part = route.parts.find(isBattery);
  if (part === undefined) return null;
  const { lifeYears } = costPart({ equipmentClass: part.equipmentClass });
  if (lifeYears === null) return null;
  return workedLife({ lifeYears, nameplateKwh: route.nameplateKwh ?? 0, kwhOutPerYear });
}

const isBattery = ({ equipmentClass }: Part) =>
  equipmentClass === 'battery' || equipmentClass === 'battery-with-solar';

function costPartOf(home: Home, route: Route, part: Part, kwhOutPerYear: number): CostPart {
  const { called, costUsd, equipmentClass, units, year } = part;
  const { low, value: likely, high } = costUsd;
  const row = costPart({ equipmentClass, units });
  const worked = isBattery(part) ? batteryLife(route, kwhOutPerYear) : null;
  return {
    ...row,
    called,
    cost: { low, likely, high },
    lifeYears: worked?.years ?? row.lifeYears,
    // What is owned already has no price to grow old, and nobody waits for it.
    priceYear: isOwned(part) ? Number(home.asOf.slice(0, 4)) : year,
    leadWeeks: isOwned(part) ? { low: 0, high: 0 } : row.leadWeeks,
  };
}
