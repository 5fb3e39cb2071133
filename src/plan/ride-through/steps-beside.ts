/** The steps just below and just above a size. */
export function stepsBeside<T>(steps: readonly T[], size: number, of: (step: T) => number): T[] {
  const below = steps.filter((step) => of(step) < size - 1e-9).at(-1);
  const above = steps.find((step) => of(step) > size + 1e-9);
  return [below, above].filter((step) => step !== undefined);
}
