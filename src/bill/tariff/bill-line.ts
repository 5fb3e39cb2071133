/** One line of a bill as it stands on paper: quantity times price is dollars, unless the price is missing. */
export interface BillLine {
  readonly kind:
    | 'fixed'
    | 'energy'
    | 'baseline'
    | 'demand'
    | 'rider'
    | 'export'
    | 'tax'
    | 'minimum'
    | 'carried';
  readonly label: string;
  readonly quantity: number | null;
  readonly unit: 'kWh' | 'kW' | 'day' | 'month' | null;
  /** $ per unit. */
  readonly price: number | null;
  /** Negative for a credit. */
  readonly dollars: number;
}

/** Sum of the dollars of some lines, all of them or those of the kinds named. */
export function sumLines(lines: readonly BillLine[], ...kinds: BillLine['kind'][]): number {
  return lines.reduce(
    (sum, line) => (kinds.length === 0 || kinds.includes(line.kind) ? sum + line.dollars : sum),
    0,
  );
}

/** A line of so many units at a price. */
export function line(
  kind: BillLine['kind'],
  label: string,
  of: { quantity: number; unit: NonNullable<BillLine['unit']>; price: number },
): BillLine {
  return { kind, label, ...of, dollars: of.quantity * of.price };
}

/** A line of dollars alone. */
export function amount(kind: BillLine['kind'], label: string, dollars: number): BillLine {
  return { kind, label, quantity: null, unit: null, price: null, dollars };
}
