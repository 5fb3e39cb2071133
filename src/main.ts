import { DONE, FAILED, WRONG_USAGE } from './commands/exit-codes';
import { printErr } from './commands/print';
import { type Arguments, readArguments } from './commands/read-arguments';

/** Run one command. Each loads only what it needs. */
async function run(args: Arguments): Promise<number> {
  if (args.help || args.version)
    return (await import('./commands/help/help-command')).printAbout(args);
  switch (args.command) {
    case 'plan':
      return (await import('./commands/plan-command')).planCommand(args);
    case 'check':
      return (await import('./commands/check-command')).checkCommand(args);
    case 'schema':
      return (await import('./commands/schema-command')).schemaCommand(args);
    case 'pictures':
      return (await import('./commands/pictures-command')).picturesCommand(args);
    case 'compare':
      return (await import('./commands/compare-command')).compareCommand(args);
    case 'explain':
      return (await import('./commands/explain-command')).explainCommand(args);
    case 'form':
      return (await import('./commands/form-command')).formCommand(args);
    case 'whatif':
      return (await import('./commands/whatif-command')).whatifCommand(args);
    case 'calc':
      return (await import('./commands/calc-command')).calcCommand(args);
    case 'forget':
      return (await import('./commands/forget-command')).forgetCommand(args);
    case 'completion':
      return (await import('./commands/help/completion-command')).completionCommand(args);
    case 'man':
      return (await import('./commands/help/man-command')).manCommand();
    case 'help':
      return (await import('./commands/help/help-command')).helpCommand(args);
    case 'version':
      return (await import('./commands/help/help-command')).versionCommand();
    case 'interview':
      return (await import('./commands/talk/interview-command')).interviewCommand(args);
  }
}

// A reader that goes away (a pager closed early) is no failure of ours; a full disk behind ">" is said.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(DONE);
  const why = error.code === 'ENOSPC' ? 'the disk is full' : error.message;
  printErr(`Could not write all of the output: ${why}. What was written is cut off.\n`);
  process.exit(FAILED);
});
process.stderr.on('error', () => {});

const args = readArguments(process.argv.slice(2));
if ('wrong' in args) {
  printErr(`${args.wrong}\n`);
  process.exitCode = WRONG_USAGE;
} else {
  run(args).then(
    (code) => {
      process.exitCode = code;
    },
    (error) => {
      const what = error instanceof Error ? error.message : String(error);
      printErr(
        `This is a fault in lampkeeper itself, not in what you typed: ${what}\nYour answers are safe in the files it named. Please report it with the command you used.\n`,
      );
      process.exitCode = FAILED;
    },
  );
}
