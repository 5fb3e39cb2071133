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
    };
