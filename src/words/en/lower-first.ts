/** The same words with a small letter at the start. */
export const lowerFirst = (words: string): string => words.charAt(0).toLowerCase() + words.slice(1);
