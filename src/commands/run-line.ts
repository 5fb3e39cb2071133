import { FAILED, WRONG_USAGE } from './exit-codes';
import { printErr } from './print';
import { type Arguments, readArguments } from './read-arguments';

/** Carry out one command line, the words behind the program's name; gives the exit code. */
export async function runLine(words: readonly string[]): Promise<number> {
  const args = readArguments(words);
  if ('wrong' in args) {
    printErr(`${args.wrong}\n`);
    return WRONG_USAGE;
  }
  try {
    return await run(args);
  } catch (error) {
    const what = error instanceof Error ? error.message : String(error);
    printErr(
      `This is a fault in lampkeeper itself, not in what you typed: ${what}\nYour answers are safe in the files it named. Please report it with the command you used.\n`,
    );
    return FAILED;
  }
}

/** Run one command. Each loads only what it needs. */
async function run(args: Arguments): Promise<number> {
  if (args.help || args.version) return (await import('./help/help-command')).printAbout(args);
  switch (args.command) {
    case 'plan':
      return (await import('./plan-command')).planCommand(args);
    case 'check':
      return (await import('./check-command')).checkCommand(args);
    case 'schema':
      return (await import('./schema-command')).schemaCommand(args);
    case 'pictures':
      return (await import('./pictures-command')).picturesCommand(args);
    case 'compare':
      return (await import('./compare-command')).compareCommand(args);
    case 'explain':
      return (await import('./explain-command')).explainCommand(args);
    case 'form':
      return (await import('./form-command')).formCommand(args);
    case 'whatif':
      return (await import('./whatif-command')).whatifCommand(args);
    case 'calc':
      return (await import('./calc-command')).calcCommand(args);
    case 'forget':
      return (await import('./forget-command')).forgetCommand(args);
    case 'completion':
      return (await import('./help/completion-command')).completionCommand(args);
    case 'man':
      return (await import('./help/man-command')).manCommand();
    case 'help':
      return (await import('./help/help-command')).helpCommand(args);
    case 'version':
      return (await import('./help/help-command')).versionCommand();
    case 'interview':
      return (await import('./talk/interview-command')).interviewCommand(args);
  }
}
