import type { CiteCode } from './cite-code';

/** Where a figure or a rule was found, part by part; `words/en/cites` says it in one line. */
export type Cite = readonly CitePart[];

export type CitePart =
  /** No reference: that it is common practice, our judgement, from memory, or how the figure was come by. */
  | CiteCode
  /** A published reference as it is printed: who, title, edition, section, figures. `of`: what it was taken for. */
  | { readonly ref: string; readonly of?: CiteCode }
  /** One of our tables by its title, that rests on no published one. */
  | { readonly table: string; readonly standing: 'practice' | 'memory' | 'judgement' }
  /** The average price of a kWh in a state, by its name, from memory. */
  | { readonly averagePriceIn: string }
  /** A question of ours. */
  | { readonly answer: string };

/** A citation of one published reference. */
export const reference = (ref: string): Cite => [{ ref }];
