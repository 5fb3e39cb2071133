import type { Values } from './values';

/** A number with its unit. `unit` is one that quantities know, or a word of the trade that may follow the number ("gpm"). */
export interface NumberInput {
  readonly kind: 'number';
  readonly key: string;
  readonly about: string;
  readonly unit: string;
  /** Lowest and highest that make sense, both allowed. */
  readonly from: number;
  readonly to: number;
  readonly whole?: boolean;
  /** Taken, and said to be assumed, when it is not given. */
  readonly assumed?: number;
  readonly optional?: true;
}

/** One of a few words. */
export interface ChoiceInput {
  readonly kind: 'choice';
  readonly key: string;
  readonly about: string;
  readonly choices: readonly string[];
  readonly assumed?: string;
  readonly optional?: true;
}

/** Words that the computation reads by itself: a day, a ZIP code. */
export interface TextInput {
  readonly kind: 'text';
  readonly key: string;
  readonly about: string;
  readonly pattern: RegExp;
  /** How to write it. */
  readonly form: string;
  readonly optional?: true;
}

/** Named things with a quantity each: "water heater 4.5 kW; dishwasher 1200 W", or a mapping in a file. */
export interface ListInput {
  readonly kind: 'list';
  readonly key: string;
  readonly about: string;
  readonly unit: string;
  readonly to: number;
  readonly optional?: true;
}

export type Input = NumberInput | ChoiceInput | TextInput | ListInput;

/** A line of the work: label = formula = value unit. */
export interface Step {
  readonly label: string;
  readonly formula: string;
  readonly value: number;
  readonly unit: string;
}

/** What was asked for: a number with its unit, or words. */
export interface Result {
  readonly label: string;
  readonly value: number | string;
  readonly unit?: string;
}

export type Outcome =
  | {
      readonly ok: true;
      readonly steps: readonly Step[];
      readonly results: readonly Result[];
      /** What the figure leaves out. */
      readonly notes?: readonly string[];
    }
  /** No valid result, and why. */
  | { readonly ok: false; readonly says: string };

/** One computation by itself: what it wants, where it comes from, and how it works. */
export interface Calculation {
  readonly name: string;
  readonly about: string;
  readonly inputs: readonly Input[];
  readonly source: string;
  /** Inputs of a worked case, as typed after the name in a shell: lists stand in quotes. */
  readonly example: string;
  run(values: Values): Outcome;
}
