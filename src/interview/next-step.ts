/** What comes after the opening: a question and why it is asked now, or nothing more that would change what to buy. */
export type NextStep =
  | {
      readonly code: 'ask';
      readonly questionId: string;
      /** One sentence on why now; empty where there is none. */
      readonly why: string;
      /** How many are left that would change the plan, this one with them. */
      readonly left: number;
    }
  | {
      readonly code: 'enough';
      /** How many open questions would only sharpen figures. */
      readonly sharpen: number;
      /** Questions answered "not sure" without which nothing can be advised: put once more before it ends. */
      readonly again: readonly Again[];
    };

export interface Again {
  readonly questionId: string;
  /** One sentence on why it is asked once more. */
  readonly why: string;
}
