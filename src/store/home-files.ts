import { readdirSync } from 'node:fs';

const HOME_FILE = /^[^.].*\.home\.ya?ml$/i;

/** Names of the home files of a folder, in order; none where it cannot be read. */
export function homeFilesIn(folder: string): string[] {
  try {
    return readdirSync(folder)
      .filter((name) => HOME_FILE.test(name))
      .sort((a, b) => a.localeCompare(b, 'en'));
  } catch {
    return [];
  }
}
