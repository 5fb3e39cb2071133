import type { Language } from './language';
import type { Words } from './words';

const folders: Readonly<Record<Language, () => Promise<Words>>> = {
  en: async () => (await import('./en')).english,
};

/** The words of one language; the others stay on the disk. */
export const wordsIn = (language: Language): Promise<Words> => folders[language]();
