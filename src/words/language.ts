/** Languages of the papers, each a folder of `src/words`. */
export const languages = ['en'] as const;

export type Language = (typeof languages)[number];
