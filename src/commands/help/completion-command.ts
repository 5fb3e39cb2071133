import { commandTable } from '../command-table';
import { bashCompletion } from '../completion/bash';
import { fishCompletion } from '../completion/fish';
import { zshCompletion } from '../completion/zsh';
import { DONE, WRONG_USAGE } from '../exit-codes';
import { printErr, printOut } from '../print';
import type { Arguments } from '../read-arguments';

const scripts: Readonly<Record<(typeof commandTable.completion.choices)[number], () => string>> = {
  bash: bashCompletion,
  zsh: zshCompletion,
  fish: fishCompletion,
};

/** `lampkeeper completion bash|zsh|fish`: a script for that shell, from the table of commands. */
export function completionCommand({ rest: [shell = ''] }: Arguments): number {
  if (!Object.hasOwn(scripts, shell)) {
    const all = commandTable.completion.choices.join(', ');
    printErr(`completion takes a shell: ${all}. Try: lampkeeper completion bash\n`);
    return WRONG_USAGE;
  }
  printOut(scripts[shell as keyof typeof scripts]());
  return DONE;
}
