/** Two answers that cannot both be right, in words. */
export interface SaidContradiction {
  /** Both answers as they were given. */
  readonly answers: readonly [string, string];
  /** The question that settles it. */
  readonly asks: string;
}
