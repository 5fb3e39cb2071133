/** So far above the money told a price is still a little more, as a share of the money. Our judgement. */
const LITTLE = 0.25;

/** The most that is no more than a little above the money told, $; without end where none was told. */
export const littleAboveUsd = (budgetUsd: number | null): number =>
  budgetUsd === null ? Infinity : (1 + LITTLE) * budgetUsd;
