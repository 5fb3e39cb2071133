import { existsSync, statSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { nearWord } from '../quantity/near-word';
import { visibleLine } from '../quantity/visible';
import { homeFileName } from '../store/home-file';
import {
  COMMANDS,
  type CommandName,
  commandRow,
  isCommand,
  type OptionName,
  optionsOf,
  optionTable,
} from './command-table';

export interface Arguments {
  readonly command: CommandName;
  /** The word of the command stands there; an interview may go without. */
  readonly commandTyped: boolean;
  /** What follows the command. */
  readonly rest: readonly string[];
  readonly short: boolean;
  /** Open the list of answers after the question about danger. */
  readonly change: boolean;
  readonly plain: boolean;
  /** Others see the screen. */
  readonly sharedScreen: boolean;
  readonly json: boolean;
  readonly force: boolean;
  /** check: write a copy without private answers. */
  readonly private: boolean;
  /** Say what would be written or removed, and do nothing. */
  readonly dryRun: boolean;
  /** forget: do not ask first. */
  readonly yes: boolean;
  /** compare: print a quote file to fill in. */
  readonly blank: boolean;
  /** plan: this sheet alone. */
  readonly sheet: string | null;
  readonly help: boolean;
  readonly version: boolean;
  readonly color: boolean;
  readonly out: string | null;
  readonly asOf: string | null;
  readonly inFile: string | null;
  /** File with the household's own tariff. */
  readonly tariff: string | null;
}

/** The command line, read. A sentence instead where it is wrong. */
export function readArguments(argv: readonly string[]): Arguments | { readonly wrong: string } {
  const broken = argv.find((word) => /[\n\r]/.test(word));
  if (broken !== undefined) return { wrong: brokenLine(broken) };
  const { values, positionals, wrong } = parse(argv);
  if (wrong !== null) return { wrong };
  const [first, ...others] = positionals;
  const named = first === undefined || !isCommand(first) ? positionals : others;
  const command = first !== undefined && isCommand(first) ? first : 'interview';
  const given = Object.keys(values) as OptionName[];
  const strange = given.find((name) => !optionsOf(command).includes(name));
  if (strange !== undefined) return { wrong: belongsElsewhere(strange, command) };
  const { takes, choices } = commandRow(command);
  // In "HOME [FIGURE]" the second word is one of a few, and no home.
  const homes = takes !== 'home' ? 0 : choices === undefined ? named.length : 1;
  const rest = named.map((word, i) => (i < homes ? homeFile(word) : word));
  const noHere = command === 'interview' ? rest.find((word) => !/\.ya?ml$/i.test(word)) : undefined;
  // A command misspelt is a command misspelt, whatever help is asked for with it.
  if (noHere !== undefined) return { wrong: noHome(noHere) };
  return {
    command,
    commandTyped: named !== positionals,
    rest,
    short: values.short === true,
    change: values.change === true,
    plain: values.plain === true,
    sharedScreen: values['shared-screen'] === true,
    json: values.json === true,
    force: values.force === true,
    private: values.private === true,
    dryRun: values['dry-run'] === true,
    yes: values.yes === true,
    blank: values.blank === true,
    sheet: textOf(values.sheet),
    help: values.help === true,
    version: values.version === true,
    color: values['no-color'] !== true,
    out: textOf(values.out),
    asOf: textOf(values['as-of']),
    inFile: textOf(values.in),
    tariff: textOf(values.tariff),
  };
}

type Values = Partial<Record<OptionName, string | boolean>>;

interface Parsed {
  readonly values: Values;
  readonly positionals: readonly string[];
  readonly wrong: string | null;
}

/** Options and words as they stand, each option one of ours, with a value exactly where it takes one. */
function parse(argv: readonly string[]): Parsed {
  const options = Object.fromEntries(
    Object.entries(optionTable).map(([name, { value, letter }]) => [
      name,
      {
        type: value === null ? ('boolean' as const) : ('string' as const),
        ...(letter === undefined ? {} : { short: letter }),
      },
    ]),
  );
  const args = [...argv];
  const read = parseArgs({ args, options, allowPositionals: true, strict: false, tokens: true });
  const values: Values = {};
  for (const token of read.tokens) {
    if (token.kind !== 'option') continue;
    const name = token.name as OptionName;
    const row = Object.hasOwn(optionTable, name) ? optionTable[name] : undefined;
    if (row === undefined) return refused(unknownOption(token.rawName));
    if (row.value === null && token.value !== undefined)
      return refused(`${token.rawName} takes no value. ${seeHelp()}`);
    // What begins with a dash after it is the next option: the value was forgotten.
    const forgotten = token.value === undefined || /^-./.test(token.inlineValue ? '' : token.value);
    if (row.value !== null && forgotten)
      return refused(`${token.rawName} takes a ${row.value.name}. ${seeHelp()}`);
    values[name] = token.value ?? true;
  }
  return { values, positionals: read.positionals, wrong: null };
}

const refused = (wrong: string): Parsed => ({ values: {}, positionals: [], wrong });

const seeHelp = () => 'Try: lampkeeper --help';

function unknownOption(typed: string): string {
  const near = nearWord(typed.replace(/^-+/, ''), Object.keys(optionTable));
  const hint = near === null ? '' : ` Did you mean --${near}?`;
  return `There is no option ${typed}.${hint} ${seeHelp()}`;
}

function belongsElsewhere(name: OptionName, command: CommandName): string {
  const owners = COMMANDS.filter((one) => commandRow(one).options.includes(name));
  return `--${name} does not go with "${command}"; it goes with ${listed(owners)}. Try: lampkeeper help ${command}`;
}

function listed(words: readonly string[]): string {
  const last = words.at(-1)!;
  return words.length === 1 ? last : `${words.slice(0, -1).join(', ')} and ${last}`;
}

/** "kim" is the home in kim.home.yaml, where that is here and no file is called just "kim"; a folder hides none. */
function homeFile(word: string): string {
  const file = homeFileName(word);
  const free = !existsSync(word) || statSync(word).isDirectory();
  return free && existsSync(file) ? file : word;
}

function noHome(word: string): string {
  if (word === '-')
    return 'An interview needs a file that it can keep answers in. From standard input: lampkeeper plan -';
  const near = nearWord(word, COMMANDS);
  const hint = near === null ? '' : ` Did you mean "${near}"?`;
  return `"${word}" is neither a command nor a home in this folder: there is no ${homeFileName(word)}.${hint} To begin a new home: lampkeeper. All commands: lampkeeper --help`;
}

/** Said back in a sentence, the rest of it would look like a line of ours. */
const brokenLine = (word: string) =>
  `No word here may hold the end of a line: "${visibleLine(word)}". Give the file another name first.`;

const textOf = (value: string | boolean | undefined) => (typeof value === 'string' ? value : null);
