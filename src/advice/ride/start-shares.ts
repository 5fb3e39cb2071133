/** The start hour the likely count takes: as many are better as worse. */
export const MIDDLE_START = 0.5;

/** The start hour the careful count takes: one start in ten is harder. */
export const HARD_START = 0.1;
