import { TRIED_KEYS } from '../interview/what-if/tried-keys';
import { FIGURE_IDS } from '../plan/explain/figure-ids';

/** What the value of an option is, or what a command takes: completion and help go by it. */
export type Takes = 'home' | 'file' | 'folder' | 'day' | 'choice' | 'words' | 'nothing';

export interface OptionRow {
  readonly says: string;
  /** Null for one that takes no value. */
  readonly value: { readonly name: string; readonly takes: Takes } | null;
  readonly letter?: string;
}

export interface CommandRow {
  /** What stands after the word, as in its first line of help. */
  readonly operands: string;
  readonly takes: Takes;
  /** Where a word is one of a few. */
  readonly choices?: readonly string[];
  /** In a few words, for the list of all. */
  readonly says: string;
  /** A paragraph more, for its own help. */
  readonly more: string;
  readonly options: readonly OptionName[];
  /** Calls after `lampkeeper`, each with what it does. */
  readonly examples: readonly (readonly [call: string, does: string])[];
}

const flag = (says: string, letter?: string): OptionRow => ({
  says,
  value: null,
  ...(letter === undefined ? {} : { letter }),
});
const valued = (name: string, takes: Takes, says: string): OptionRow => ({
  says,
  value: { name, takes },
});

/** Every option, once. What it does is the same with each command that knows it. */
const optionRows = {
  short: flag('stop at a first plan, after the opening'),
  change: flag('show the list of answers at once, to change some and write the plan again'),
  plain: flag('ask line by line, for screen readers and plain terminals'),
  'shared-screen': flag(
    'hide names, words of health and money on a screen that others see; Ctrl+O shows them until the next key',
  ),
  out: valued('DIR', 'folder', 'write the papers into this folder'),
  tariff: valued('FILE', 'file', 'use your own tariff (its form: lampkeeper schema tariff)'),
  in: valued('FILE', 'file', 'read inputs from a YAML or JSON file, or from standard input with -'),
  json: flag('print data instead of words'),
  force: flag('replace papers that somebody changed'),
  private: flag('write a copy without who lives there, where, and money'),
  'dry-run': flag('say what would be written or removed, and do nothing'),
  yes: flag('do not ask first'),
  blank: flag('print a quote file to fill in'),
  sheet: valued('NAME', 'words', 'print one sheet alone, such as fridge, family, year or quote'),
  'as-of': valued('DAY', 'day', 'count ages of figures from this day, YYYY-MM-DD'),
  'no-color': flag('no color (also: NO_COLOR, TERM=dumb)'),
  help: flag('help for the command', 'h'),
  version: flag('the version', 'v'),
} satisfies Readonly<Record<string, OptionRow>>;

export type OptionName = keyof typeof optionRows;

export const optionTable: Readonly<Record<OptionName, OptionRow>> = optionRows;

/** Belong to every command. */
export const EVERYWHERE: readonly OptionName[] = ['no-color', 'help', 'version'];

/** Every command: help, completion, the man page and the check of options come from here. */
export const commandTable = {
  interview: {
    operands: '[HOME]',
    takes: 'home',
    says: 'ask about a home and write its plan; the word may be left out',
    more: 'Without a home it begins a new one, or offers those begun in this folder, and another one on the street of one of them: it takes over the place and what power costs, and nothing else. Each answer is on the disk before the next question. Stop at any time and go on later.',
    options: ['short', 'change', 'plain', 'shared-screen', 'tariff', 'as-of', 'force'],
    examples: [
      ['', 'start, or choose a home begun in this folder'],
      ['kim', 'go on with the home in kim.home.yaml'],
      ['kim --change', 'change some answers and write the plan again'],
      ['--short --shared-screen', 'a first plan with neighbors looking on'],
    ],
  },
  plan: {
    operands: 'HOME',
    takes: 'home',
    says: 'make the plan of a home, and print it or write its papers',
    more: 'The same home file gives the same plan. With - in place of a home the file is read from standard input.',
    options: ['out', 'force', 'tariff', 'json', 'sheet', 'dry-run', 'as-of'],
    examples: [
      ['plan kim.home.yaml', 'print the summary'],
      ['plan kim --sheet fridge', 'print the sheet for the night the power fails'],
      ['plan kim --out papers', 'write its papers into a folder'],
      ['plan kim --out papers --dry-run', 'say what that would write'],
      ['plan - --json < kim.home.yaml', 'the plan as data'],
    ],
  },
  check: {
    operands: 'FILE',
    takes: 'home',
    says: 'say what is wrong in a home, tariff, quote or plan file, by line',
    more: 'It also says what private things a home file holds. With - the file is read from standard input.',
    options: ['json', 'private', 'dry-run'],
    examples: [
      ['check kim.home.yaml', 'every fault with line, column and remedy'],
      ['check kim --json', 'the same as data'],
      ['check kim --private', 'write kim-to-share.home.yaml without what is private'],
    ],
  },
  explain: {
    operands: 'HOME [FIGURE]',
    takes: 'home',
    choices: FIGURE_IDS,
    says: 'show how a figure of a plan was worked out, back to your answers',
    more: 'Without a figure it lists those that the plan has. Each line can be done again by hand with the numbers in it; what is not worked out further names your answer, or the table and its source.',
    options: ['tariff', 'as-of'],
    examples: [
      ['explain kim', 'the figures that can be explained'],
      ['explain kim price', 'what the price is made of'],
    ],
  },
  form: {
    operands: '[HOME]',
    takes: 'home',
    says: 'print what to look at in a home, with room to write',
    more: 'Without a home it prints all questions. What was answered "not sure" or left to look at stands by place, in the order of a walk. Back at the computer "Enter what I found" asks just those.',
    options: [],
    examples: [
      ['form kim > walk.md', 'the list of one home'],
      ['form > questions.md', 'the whole bank on paper'],
    ],
  },
  pictures: {
    operands: 'HOME',
    takes: 'home',
    says: 'draw the plan of a home: money, levels, a hard case, odds, costs, the year',
    more: 'In blocks where the terminal shows them, else in letters; with --plain as lines to be read aloud. NAME.plan.html holds the same pictures to print.',
    options: ['plain', 'as-of'],
    examples: [
      ['pictures kim', 'the pictures in this terminal'],
      ['pictures kim --plain', 'the same as lines of figures'],
    ],
  },
  whatif: {
    operands: 'HOME KEY=VALUE ...',
    takes: 'home',
    choices: TRIED_KEYS.map((key) => `${key}=`),
    says: 'lay the plan beside one with other answers; it writes nothing',
    more: 'Keys: goal, season, budget, generator-place, more and less (a load), size (larger or smaller), refill (no, or days), or any question by its id in the home file. Values are checked as answers are; "not sure" is one. Figures are quick ones from 5 drawn years. With --plain each line stands below the other.',
    options: ['plain', 'as-of'],
    examples: [
      ['whatif kim goal=48', 'what 48 hours would take'],
      ['whatif kim season=winter less=cool', 'two things at once'],
      ['whatif kim "budget=not sure"', 'without a limit'],
    ],
  },
  compare: {
    operands: 'HOME QUOTE',
    takes: 'home',
    says: 'lay a quote that came back, or another home, beside the plan',
    more: 'A quote is a small file of ten lines: price, usable kWh, watts, starting VA, how the house is moved over, what is left out, permit, license, warranty, weeks. What it lacks is said first, then the plan, the quote and what to ask, line by line. With a second home file it lays the two plans beside each other.',
    options: ['blank', 'as-of'],
    examples: [
      ['compare kim --blank > kim.quote.yaml', 'a quote file to fill in'],
      ['compare kim kim.quote.yaml', 'that quote beside the plan'],
      ['compare kim sam.home.yaml', 'two plans beside each other'],
    ],
  },
  calc: {
    operands: '[NAME [KEY=VALUE ...]]',
    takes: 'words',
    says: 'one of the single computations, with its work',
    more: 'Without a name it lists them all; with a name alone it says what that one takes.',
    options: ['in', 'tariff', 'json'],
    examples: [
      ['calc', 'list the computations'],
      ['calc pump-power gpm=10 head=275', 'the work of one'],
    ],
  },
  schema: {
    operands: 'home|plan|tariff|quote',
    takes: 'choice',
    choices: ['home', 'plan', 'tariff', 'quote'],
    says: 'the form of a file, as a JSON Schema for editors',
    more: 'An editor that knows it completes names and marks faults while a file is written by hand.',
    options: [],
    examples: [['schema home > home.schema.json', 'the form of a home file']],
  },
  forget: {
    operands: 'HOME',
    takes: 'home',
    says: 'remove a home with its papers and everything begun for it',
    more: 'It lists what it would remove and asks first. Papers written into another folder are found with --out. Copies made by others, by a backup or a sync service are not reached.',
    options: ['out', 'yes', 'dry-run'],
    examples: [
      ['forget kim', 'list, ask, remove'],
      ['forget kim --out papers --yes', 'its papers in that folder too, without asking'],
    ],
  },
  completion: {
    operands: 'bash|zsh|fish',
    takes: 'choice',
    choices: ['bash', 'zsh', 'fish'],
    says: 'a script that completes commands, options and homes in your shell',
    more: 'It is printed; where a shell looks for it, its own manual says.',
    options: [],
    examples: [
      ['completion bash > ~/.local/share/bash-completion/completions/lampkeeper', 'for bash'],
      ['completion fish > ~/.config/fish/completions/lampkeeper.fish', 'for fish'],
    ],
  },
  man: {
    operands: '',
    takes: 'nothing',
    says: 'the manual page, for man',
    more: 'It is printed in the form that man reads.',
    options: [],
    examples: [['man > lampkeeper.1', 'then: man ./lampkeeper.1']],
  },
  help: {
    operands: '[COMMAND]',
    takes: 'choice',
    says: 'this page, or the help for one command',
    more: 'The same as --help after a command.',
    options: [],
    examples: [['help plan', 'how to make a plan of a home file']],
  },
  version: {
    operands: '',
    takes: 'nothing',
    says: 'the version',
    more: 'The same as --version.',
    options: [],
    examples: [['version', 'print it']],
  },
} as const satisfies Readonly<Record<string, CommandRow>>;

export type CommandName = keyof typeof commandTable;

/** Words that begin a command line, and so are no names of homes. */
export const COMMANDS = Object.keys(commandTable) as CommandName[];

export const commandRow = (name: CommandName): CommandRow => commandTable[name];

export const isCommand = (word: string): word is CommandName => Object.hasOwn(commandTable, word);

/** Options that belong to a command, its own first. */
export const optionsOf = (name: CommandName): OptionName[] => [
  ...commandRow(name).options,
  ...EVERYWHERE,
];
