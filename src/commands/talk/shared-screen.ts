import interview from '#compiled/questions.js';
import { glyphsFor } from '../../faces/screen/glyphs';
import { type Hide, hider } from '../../interview/hide-words';
import { nameOfFile } from '../../store/home-file';
import { homeFilesIn } from '../../store/home-files';
import { printErr } from '../print';
import type { Arguments } from '../read-arguments';
import { whyLines } from './choose-face';

/** Names of the homes of this folder, to hide wherever they stand. */
export function namesHere(): string[] {
  return homeFilesIn('.').map(nameOfFile);
}

/** What hides them and the name of a home kept elsewhere, with words of health and money; nothing where the screen is not shared. */
export function hideFor(
  { sharedScreen }: Pick<Arguments, 'sharedScreen'>,
  names: readonly string[] = [],
): Hide | undefined {
  if (!sharedScreen) return undefined;
  return hider(interview, [...namesHere(), ...names], glyphsFor(process.env).dots);
}

/** Line by line all that is typed stays to be read: why nothing can be hidden there, or null. */
export function whyNotShared(args: Arguments): string | null {
  if (!args.sharedScreen) return null;
  const { stdin, stdout, env } = process;
  const why = whyLines({ env, stdin, stdout, plain: args.plain });
  if (why === null) return null;
  return `--shared-screen needs the whole window, and here questions come line by line (${why}): what is typed would stay to be read.`;
}

/** Nothing of the home before stays to be scrolled back to. */
export function clearScreen(): void {
  process.stdout.write('\x1b[H\x1b[2J\x1b[3J');
}

/**
 * Before what is private is printed on a screen that others see: wait for a key. False where it was Ctrl+C, or where
 * nobody is there.
 */
export async function mayPrint(
  args: Pick<Arguments, 'sharedScreen'>,
  what: string,
  stdin: NodeJS.ReadStream = process.stdin,
): Promise<boolean> {
  if (!args.sharedScreen) return true;
  printErr(`${what}\nPress Enter to print it on this screen, or Ctrl+C to leave it out.\n`);
  const { openKeyboard } = await import('../../faces/screen/keys/open-keyboard');
  return new Promise((resolve) => {
    const done = (print: boolean) => {
      keyboard.close();
      resolve(print);
    };
    const keyboard = openKeyboard({
      stdin,
      onGone: () => done(false),
      onKeys: (keys) => {
        const key = keys.find(({ name }) => name === 'enter' || name === 'ctrl-c');
        if (key !== undefined) done(key.name === 'enter');
      },
    });
  });
}
