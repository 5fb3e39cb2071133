import type { Lasts, PlanFacts, Span } from './plan-facts';

/** Facts from few drawn years, what was counted over those rounded down so that it does not look more exact than it is. */
export function aboutFacts(facts: PlanFacts): PlanFacts {
  const { lasts, odds, refill, devices } = facts;
  return {
    ...facts,
    lasts: aboutLasts(lasts),
    devices:
      devices === null || devices === 'none-carried'
        ? devices
        : {
            likelyHours: aboutHours(devices.likelyHours),
            carefulHours: aboutHours(devices.carefulHours),
          },
    odds: odds && { today: twentieths(odds.today), stored: odds.stored && twentieths(odds.stored) },
    refill: refill && { ...refill, share: twentieths(refill.share) },
  };
}

function aboutLasts(lasts: Lasts): Lasts {
  if (lasts.code !== 'hours') return lasts;
  const { today, stored, overDrawnYears } = lasts;
  if (!overDrawnYears) return lasts;
  return {
    ...lasts,
    today: aboutSpan(today),
    stored: stored && { ...stored, hours: aboutSpan(stored.hours) },
  };
}

const aboutSpan = ({ low, likely, high }: Span): Span => ({
  low: aboutHours(low),
  likely: aboutHours(likely),
  high: aboutHours(high),
});

/** Two digits at most: 7, 18, 36, 120 h. */
export function aboutHours(hours: number): number {
  const step = hours < 12 ? 1 : hours < 48 ? 2 : hours < 120 ? 6 : 24;
  return Math.floor(hours / step) * step;
}

/** Shares in steps of one in twenty; "all of them" is never claimed. */
const twentieths = (share: number): number => Math.min(19, Math.floor(20 * share + 1e-9)) / 20;
