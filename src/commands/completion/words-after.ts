import { COMMANDS, type CommandRow, commandTable } from '../command-table';

/** What may stand after a command: words of a short list, and whether files. */
export function wordsAfter({ takes, choices }: CommandRow): {
  readonly words: readonly string[];
  readonly files: boolean;
} {
  const words = choices ?? (takes === 'choice' ? COMMANDS.filter((name) => name !== 'help') : []);
  return { words, files: takes === 'home' || takes === 'file' };
}

/** The row of a command, whatever its own type. */
export const rows = Object.entries(commandTable) as [string, CommandRow][];
