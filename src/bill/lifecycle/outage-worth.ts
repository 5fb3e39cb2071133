/** A loss an outage may bring, as the household puts it. */
export interface OutageLoss {
  readonly name: string;
  readonly dollars: number;
  /** It strikes when the power is out longer than this, hours. */
  readonly afterHours: number;
  /** Once an outage, or again for each day begun after that. */
  readonly each: 'outage' | 'day';
}

/** A sort of outage: how long, and how many a year. */
export interface OutagesAYear {
  readonly hours: number;
  readonly perYear: number;
}

export interface LossAYear {
  readonly name: string;
  readonly dollarsPerYear: number;
}

/**
 * What outages are expected to cost the household a year without backup: loss x outages long enough to bring it.
 * Shown apart from the bill; never added to savings unless the household asks.
 */
export function outageLosses(
  losses: readonly OutageLoss[],
  outages: readonly OutagesAYear[],
): LossAYear[] {
  return losses.map((loss) => {
    const dollarsPerYear = outages.reduce((sum, outage) => {
      const over = outage.hours - loss.afterHours;
      if (over <= 0) return sum;
      const times = loss.each === 'day' ? Math.ceil(over / 24) : 1;
      return sum + loss.dollars * times * outage.perYear;
    }, 0);
    return { name: loss.name, dollarsPerYear };
  });
}
