import { existsSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Answers } from '../interview/answers';
import type { Interview } from '../interview/questions/question';
import { nameOfFile } from './home-file';
import { homeFilesIn } from './home-files';
import { readHome } from './read-home';

/** What stands in one home file of a folder. */
export interface HomeInFolder {
  readonly name: string;
  readonly file: string;
  /** Null where the file cannot be read. */
  readonly answers: Answers | null;
  readonly hasTariff: boolean;
  readonly hasPlan: boolean;
  /** When the file was last changed, ms since 1970. */
  readonly changedAt: number;
}

/** The homes of a folder, each as its file tells it. */
export function homesIn(folder: string, interview: Interview): HomeInFolder[] {
  return homeFilesIn(folder).map((file) => {
    const name = nameOfFile(file);
    const path = join(folder, file);
    const read = readHome(path, interview);
    return {
      name,
      file,
      answers: read.ok ? read.answers : null,
      hasTariff: read.ok && read.ownTariff !== undefined,
      hasPlan: existsSync(join(folder, `${name}.plan.md`)),
      changedAt: statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0,
    };
  });
}
