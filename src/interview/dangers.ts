import type { Answer } from './answers';
import { choicesIn } from './answers';

/** Where a step stands: get away, call, switch off, the rest. In this order. */
const PARTS = ['away', 'call', 'off', 'rest'] as const;

export interface DangerStep {
  readonly id: string;
  readonly part: (typeof PARTS)[number];
  /** What it makes somebody do, of the things a danger can forbid. */
  readonly does: readonly string[];
  /** Only while one of these is told. */
  readonly with?: readonly string[];
  /** Only while none of these is told. */
  readonly without?: readonly string[];
  /** One instruction. */
  readonly say: string;
}

export interface Danger {
  /** A choice of the question. */
  readonly id: string;
  /** By minutes to live: 1 leaves the fewest. */
  readonly rank: number;
  /** Nobody stays: nothing is offered but to leave and to call. */
  readonly leaveNow: boolean;
  readonly forbids: readonly string[];
  readonly steps: readonly string[];
}

/** The table of dangers, as compiled from `questions/en/dangers.yaml`. */
export interface Dangers {
  /** Id of the question whose choices they are. */
  readonly question: string;
  readonly dangers: readonly Danger[];
  readonly steps: readonly DangerStep[];
}

/** The dangers among the ids told, the deadliest first. */
export function dangersTold({ dangers }: Dangers, told: readonly string[]): Danger[] {
  return dangers.filter((one) => told.includes(one.id)).sort((a, b) => a.rank - b.rank);
}

/** The dangers of an answer, the deadliest first; none for "not sure" and for no answer. */
export function dangersOf(table: Dangers, answer: Answer | undefined): Danger[] {
  return dangersTold(table, choicesIn(answer) ?? []);
}

/** True while a danger is told in which nobody may stay. */
export function mustLeave(table: Dangers, told: readonly string[]): boolean {
  return dangersTold(table, told).some((one) => one.leaveNow);
}

/**
 * What to do about the dangers told, in order: parts as above, within a part by rank. A step that any of them forbids
 * is dropped.
 */
export function dangerSteps(table: Dangers, told: readonly string[]): DangerStep[] {
  const here = dangersTold(table, told);
  const has = (ids: readonly string[]) => here.some((one) => ids.includes(one.id));
  const forbidden = new Set(here.flatMap((one) => one.forbids));
  const named = [...new Set(here.flatMap((one) => one.steps))];
  const steps = named.map((id) => table.steps.find((step) => step.id === id)!);
  const fit = steps.filter(
    (step) =>
      !step.does.some((act) => forbidden.has(act)) &&
      (step.with === undefined || has(step.with)) &&
      (step.without === undefined || !has(step.without)),
  );
  return PARTS.flatMap((part) => fit.filter((step) => step.part === part));
}

/** True when something is told, and nothing that ends the sitting first: the danger ranked last forbids nothing. */
export function canWait(table: Dangers, told: readonly string[]): boolean {
  const here = dangersTold(table, told);
  return here.length > 0 && here.every((one) => one.forbids.length === 0);
}

/** For somebody who is not sure: each danger that cannot wait by itself, with its own steps. */
export function dangersToCheck(table: Dangers): { id: string; steps: DangerStep[] }[] {
  const urgent = table.dangers.filter((one) => !canWait(table, [one.id]));
  return urgent
    .sort((a, b) => a.rank - b.rank)
    .map(({ id }) => ({ id, steps: dangerSteps(table, [id]) }));
}
