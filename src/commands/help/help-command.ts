import { nearWord } from '../../quantity/near-word';
import { COMMANDS, isCommand } from '../command-table';
import { DONE, WRONG_USAGE } from '../exit-codes';
import { printErr, printOut } from '../print';
import type { Arguments } from '../read-arguments';
import { allHelp, helpFor, versionLine } from './help-text';

/** `lampkeeper help [COMMAND]`. */
export function helpCommand({ rest: [name] }: Arguments): number {
  if (name === undefined) {
    printOut(allHelp());
    return DONE;
  }
  if (!isCommand(name)) {
    const near = nearWord(name, COMMANDS);
    const hint = near === null ? '' : ` Did you mean "${near}"?`;
    printErr(`There is no command "${name}".${hint} There are: ${COMMANDS.join(', ')}.\n`);
    return WRONG_USAGE;
  }
  printOut(helpFor(name));
  return DONE;
}

export function versionCommand(): number {
  printOut(versionLine());
  return DONE;
}

/** `--help` and `--version`, whatever stands beside them. Without a command it is the help for all. */
export function printAbout(args: Arguments): number {
  if (!args.help) return versionCommand();
  printOut(args.commandTyped ? helpFor(args.command) : allHelp());
  return DONE;
}
