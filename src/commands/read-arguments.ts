import { parseArgs } from 'node:util';

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
    if (!isCommand && !/\.ya?ml$/i.test(first)) {
      return { wrong: `"${first}" is neither a command nor a home file. Try: lampkeeper --help` };
    }
    return {
      command: isCommand ? first : 'interview',
      rest: isCommand ? others : positionals,
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

function firstSentence(error: unknown): string {
  const message = error instanceof Error ? error.message : String(error);
  return `${message.split('. ')[0]!.replace(/\.$/, '')}.`;
}
