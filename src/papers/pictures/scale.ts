/** Marks along an axis: from zero up to at least the largest value, in steps of 1, 2 or 5 times a power of ten. */
export function ticksTo(largest: number, wanted = 5): number[] {
  if (!(largest > 0) || !Number.isFinite(largest)) return [0, 1];
  const rough = largest / wanted;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((m) => m * power).find((s) => s >= rough * 0.999) ?? 10 * power;
  const count = Math.ceil(largest / step - 1e-9);
  return Array.from({ length: count + 1 }, (_, i) => Number((i * step).toPrecision(12)));
}

/** A straight scale from values to view box units. */
export function scaleOf(values: { from: number; to: number }, units: { from: number; to: number }) {
  const span = values.to - values.from || 1;
  return (value: number) => units.from + ((value - values.from) / span) * (units.to - units.from);
}
