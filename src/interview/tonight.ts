import { type Dangers, dangersTold, mustLeave } from './dangers';

/** One part of the page for tonight, as compiled from `questions/en/tonight.yaml`. */
export interface TonightPart {
  readonly id: string;
  readonly title: string;
  /** Who says so. */
  readonly source: string;
  readonly lines: readonly { readonly does: readonly string[]; readonly say: string }[];
}

/** The danger that makes the page useful. */
const POWER_OFF = 'power-off';

/** The page is offered while the power is off and nobody has to leave. */
export function offersTonight(table: Dangers, told: readonly string[]): boolean {
  return told.includes(POWER_OFF) && !mustLeave(table, told);
}

/** The page without what a danger told makes deadly. */
export function tonightFor(
  parts: readonly TonightPart[],
  table: Dangers,
  told: readonly string[],
): TonightPart[] {
  const forbidden = new Set(dangersTold(table, told).flatMap((one) => one.forbids));
  return parts
    .map((part) => ({
      ...part,
      lines: part.lines.filter(({ does }) => !does.some((act) => forbidden.has(act))),
    }))
    .filter(({ lines }) => lines.length > 0);
}
