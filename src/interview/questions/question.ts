import type { Dangers } from '../dangers';
import type { TonightPart } from '../tonight';
import type { Walk } from '../walk';

/** When a question or a choice applies. Refers to earlier questions by id only. */
export type Condition =
  | { readonly q: string; readonly is: string | readonly string[] }
  | { readonly q: string; readonly isNot: string | readonly string[] }
  | { readonly q: string; readonly has: string | readonly string[] }
  | { readonly q: string; readonly hasNot: string | readonly string[] }
  /** Holds also where the question does not apply. */
  | { readonly q: string; readonly lacks: string | readonly string[] }
  | { readonly q: string; readonly atLeast: number }
  | { readonly q: string; readonly below: number }
  | { readonly q: string; readonly unsure: boolean }
  | { readonly all: readonly Condition[] }
  | { readonly any: readonly Condition[] };

export interface Choice {
  readonly id: string;
  readonly label: string;
  /** The choice is offered only when this holds. */
  readonly when?: Condition;
  /** In a list of ticks: this one stands alone ("none of these"). */
  readonly alone?: boolean;
  /** Shown at once when chosen, before anything else goes on: one instruction a line. */
  readonly actNow?: string;
}

export type Kind = 'choice' | 'choices' | 'number' | 'numbers' | 'zip' | 'name' | 'text';

/** What "not sure" does: the value assumed, its range, and why that one. */
export interface Unsure {
  /** Choice id, list of ids, or a number in the question's unit. Null: nothing may be assumed. */
  readonly assume: string | readonly string[] | number | null;
  readonly low?: number;
  readonly high?: number;
  readonly because: string;
}

/** One question, as compiled from `questions/en/TOPIC/ID.yaml`. */
export interface Question {
  readonly id: string;
  readonly topic: string;
  readonly kind: Kind;
  readonly ask: string;
  readonly hint: string;
  /** Why we ask. */
  readonly why: string;
  /** How to find out. */
  readonly find: string;
  /** The question as a short statement, for the list of answers. */
  readonly says: string;
  readonly choices?: readonly Choice[];
  /** Canonical unit of a number, or of several. */
  readonly unit?: string;
  /** How many numbers are asked for in one line. */
  readonly count?: number;
  /** Letters of a text at most. */
  readonly longest?: number;
  /** Volts that turn amps typed alone into watts. */
  readonly volts?: number;
  /** The number may have decimals. */
  readonly decimals?: boolean;
  readonly possible?: readonly [number, number];
  readonly usual?: readonly [number, number];
  /** The answer is read off a label. */
  readonly nameplate?: boolean;
  /** A wrong guess could hurt someone: not sure takes the careful branch. */
  readonly safety?: boolean;
  /** Asked of nobody who does not open it in the list of answers: unanswered, it is not open. */
  readonly optional?: boolean;
  readonly unsure: Unsure;
  readonly when?: Condition;
}

export interface Topic {
  readonly id: string;
  readonly title: string;
}

/** What is private about an answer: the name of the files, who lives there and their health, where, or money. */
export type PrivateKind = 'name' | 'people' | 'place' | 'money';

/** The whole interview as data, in asking order. */
export interface Interview {
  readonly topics: readonly Topic[];
  readonly questions: readonly Question[];
  /** What each danger asks for, and what it forbids. */
  readonly dangers: Dangers;
  /** What to do tonight, while the power is off. */
  readonly tonight: readonly TonightPart[];
  /** Ids asked first and in this order: from them a first plan stands, and the short talk ends with them. */
  readonly opening: readonly string[];
  /** By question, the choices that open the way to a generator. The first question decides. */
  readonly readBack: Readonly<Record<string, readonly string[]>>;
  /** Ids of what a household may not want to hand on, by kind. */
  readonly private: Readonly<Record<PrivateKind, readonly string[]>>;
  /** Ids of matters of life, asked for once more line by line. */
  readonly sureOf: readonly string[];
  /** Beginnings of words that tell of somebody's health. */
  readonly medicalWords: readonly string[];
  /** Ids of what the homes of a street have in common, besides what a tariff tells. */
  readonly street: readonly string[];
  /** Ids of what changes the plan most or could hurt: while one is open the plan is a draft. */
  readonly mattersMost: readonly string[];
  /** What may be looked at later, by place. */
  readonly walk: Walk;
  /** Ids of what a tariff file tells; never a condition of a question outside the list. */
  readonly tariff: readonly string[];
  /** Ids asked once and no longer: an older file may still hold them. */
  readonly retired: readonly string[];
}
