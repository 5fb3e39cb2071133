import { existsSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { homeFileName } from '../store/home-file';

export interface Arguments {
  readonly command: string;
  /** What follows the command. */
  readonly rest: readonly string[];
  readonly short: boolean;
  /** Open the list of answers after the question about danger. */
  readonly change: boolean;
  readonly plain: boolean;
  readonly json: boolean;
  readonly force: boolean;
  /** check: write a copy without private answers. */
  readonly private: boolean;
  readonly help: boolean;
  readonly version: boolean;
  readonly color: boolean;
  readonly out: string | null;
  readonly asOf: string | null;
  readonly inFile: string | null;
  /** File with the household's own tariff. */
  readonly tariff: string | null;
}

/** Words that begin a command line, and so are no names of homes. */
export const COMMANDS = ['interview', 'plan', 'check', 'schema', 'calc'];

/** The command line, read. A sentence instead where it is wrong. */
export function readArguments(argv: readonly string[]): Arguments | { readonly wrong: string } {
  try {
    const { values, positionals } = parseArgs({
      args: [...argv],
      allowPositionals: true,
      options: {
        short: { type: 'boolean', default: false },
        change: { type: 'boolean', default: false },
        plain: { type: 'boolean', default: false },
        json: { type: 'boolean', default: false },
        force: { type: 'boolean', default: false },
        private: { type: 'boolean', default: false },
        help: { type: 'boolean', short: 'h', default: false },
        version: { type: 'boolean', short: 'v', default: false },
        'no-color': { type: 'boolean', default: false },
        out: { type: 'string' },
        'as-of': { type: 'string' },
        in: { type: 'string' },
        tariff: { type: 'string' },
      },
    });
    const [first = 'interview', ...others] = positionals;
    const isCommand = COMMANDS.includes(first);
    const command = isCommand ? first : 'interview';
    const named = isCommand ? others : positionals;
    const rest = TAKE_HOMES.includes(command) ? named.map(homeFile) : named;
    const wrong =
      command === 'interview' ? rest.find((word) => !/\.ya?ml$/i.test(word)) : undefined;
    if (wrong !== undefined) return { wrong: noHome(wrong) };
    return {
      command,
      rest,
      short: values.short,
      change: values.change,
      plain: values.plain,
      json: values.json,
      force: values.force,
      private: values.private,
      help: values.help,
      version: values.version,
      color: !values['no-color'],
      out: values.out ?? null,
      asOf: values['as-of'] ?? null,
      inFile: values.in ?? null,
      tariff: values.tariff ?? null,
    };
  } catch (error) {
    return { wrong: `${firstSentence(error)} Try: lampkeeper --help` };
  }
}

/** Commands whose words are homes. */
const TAKE_HOMES = ['interview', 'plan', 'check'];

/** "kim" is the home in kim.home.yaml, where that is here and no file is called just "kim". */
function homeFile(word: string): string {
  const file = homeFileName(word);
  return !existsSync(word) && existsSync(file) ? file : word;
}

function noHome(word: string): string {
  return `"${word}" is neither a command nor a home in this folder: there is no ${homeFileName(word)}. To begin a new home: lampkeeper. All commands: lampkeeper --help`;
}

function firstSentence(error: unknown): string {
  const message = error instanceof Error ? error.message : String(error);
  return `${message.split('. ')[0]!.replace(/\.$/, '')}.`;
}
