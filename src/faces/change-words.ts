import { aboutHours, priceWords } from './glance-words';
import type { ShownGlance } from './shown-draft';

/** What the last answer changed in the plan so far, in one sentence; null where there was none to change. */
export function changeWords(before: ShownGlance, now: ShownGlance): string | null {
  const [from, to] = [before.route, now.route];
  if (from === null || to === null) return null;
  if (from.kind !== to.kind)
    return `Your last answer changed the plan: before, it was ${lower(from.title)}.`;
  const [was, is] = [priceWords(from.costUsd), priceWords(to.costUsd)];
  if (was !== is) return `Your last answer changed the price: it was ${was}.`;
  const [long, longer] = [from.hours, to.hours].map((one) => (one === null ? '' : aboutHours(one)));
  if (long !== longer)
    return `Your last answer changed how long it lasts: it was ${long || 'without end'}.`;
  return 'Your last answer changed nothing to buy.';
}

function lower(title: string): string {
  return /^[A-Z][a-z]/.test(title) ? title[0]!.toLowerCase() + title.slice(1) : title;
}
