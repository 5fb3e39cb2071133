/** What a load of a calculation is called: as somebody typed it, or a code that words say. */
export type LineName = string | { readonly code: string };

/** Heating or cooling, and the share of its nameplate that is counted. */
export type ClimateShare =
  | 'cooling-whole'
  | 'heating-whole'
  | 'pump-and-backup' // compressor whole, back-up heat at 65 %
  | 'electric-heat-few' // fewer than four controls, at 65 %
  | 'electric-heat-many' // four controls or more, at 40 %
  | 'storage-heat-whole';

/** How the demand of cooking was reached by Table 220.55. */
export type CookingHow =
  | { readonly code: 'none' | 'more-than-the-table' }
  | { readonly code: 'whole-outside'; readonly va: number }
  /** Column C for so many units; `notes`: 1, or 1 and 2. */
  | { readonly code: 'column-c'; readonly units: number; readonly notes: 0 | 1 | 2 }
  | { readonly code: 'share'; readonly share: number; readonly va: number }
  | { readonly code: 'both'; readonly parts: readonly [CookingHow, CookingHow] }
  | { readonly code: 'and-whole'; readonly table: CookingHow; readonly va: number };

/** What a line of a load calculation is of; its words stand with whoever shows it. */
export type LineIs =
  | {
      readonly code:
        | 'general-load'
        | 'sum-of-these'
        | 'general-after-demand'
        | 'dryer'
        | 'room-heaters' // four controls or more
        | 'largest-motor' // 25 % of it
        | 'metered-peak'
        | 'metered-peak-and-quarter'
        | 'new-load';
    }
  | { readonly code: 'lighting'; readonly ft2: number; readonly vaPerFt2: number }
  | {
      readonly code: 'kitchen-circuits' | 'laundry-circuits';
      readonly circuits: number;
      readonly circuitVa: number;
    }
  | { readonly code: 'first'; readonly va: number }
  | { readonly code: 'next' | 'above' | 'other'; readonly va: number; readonly share: number }
  | { readonly code: 'cooking'; readonly how: CookingHow }
  | { readonly code: 'cooking-share' | 'dryer-share'; readonly share: number }
  | {
      readonly code: 'fixed-appliances' | 'other-appliances';
      readonly share: number;
      readonly names: readonly LineName[];
    }
  /** One load by its name. */
  | { readonly code: 'load'; readonly name: LineName }
  | { readonly code: 'climate'; readonly of: ClimateShare; readonly leftOut: boolean };
