import { homeFilesIn } from '../store/home-files';
import { DONE } from './exit-codes';
import type { Arguments } from './read-arguments';

/** The home to sit at; without a file a new one, which may begin with what the street of another shares. */
export interface Chosen {
  readonly file: string | null;
  readonly like: string | null;
}

/** The home to go on with or a new one, or the code to leave with. Without a home here, or with a script, a new one. */
export async function whichHome(args: Arguments, interrupted: number): Promise<Chosen | number> {
  if (!process.stdin.isTTY || homeFilesIn('.').length === 0) return { file: null, like: null };
  const { chooseHere } = await import('./talk/choose-home');
  const choice = await chooseHere(args);
  if (choice.way === 'leave') return choice.interrupted ? interrupted : DONE;
  return choice.way === 'go-on'
    ? { file: choice.file, like: null }
    : { file: null, like: choice.like };
}
