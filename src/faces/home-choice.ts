import { visibleLine } from '../quantity/visible';

/** A home begun before, and how far it has come. */
export interface HomeHere {
  readonly name: string;
  readonly file: string;
  /** Null where the file cannot be read. */
  readonly answered: number | null;
  /** Questions until a first plan stands, judged as if each were answered "not sure". */
  readonly toFirstPlan: number;
  /** Nothing at all is left to ask. */
  readonly isWhole: boolean;
  readonly hasPlan: boolean;
  /** Short names of what another home of its street can take over; empty where nothing of it is told. */
  readonly street: readonly string[];
  /** When the file was last changed, ms since 1970. */
  readonly changedAt: number;
}

/** What somebody chose of the homes here: one to go on with, a new one, or to leave. */
export type HomeChoice =
  | { readonly way: 'go-on'; readonly file: string }
  /** Another one, beginning with what the street of that home shares. */
  | { readonly way: 'new'; readonly like: string | null }
  | { readonly way: 'leave'; readonly interrupted: boolean };

/** A line of a list of homes: a choice, or the way to the list of streets. */
export type HomesLine = HomeChoice | { readonly way: 'which-street' };

/** One list to choose from: its title, what it is for, and its lines. */
export interface HomesList {
  readonly title: string;
  readonly hint: string;
  readonly labels: readonly string[];
  readonly lines: readonly HomesLine[];
  /** How many of the lines are homes begun before; what begins another one stands apart. */
  readonly homes: number;
}

export const HOMES_TITLE = 'Homes in this folder';
const HOMES_HINT = 'Choose one to go on with, or begin another.';
const STREETS_TITLE = 'On the street of which home?';
const STREETS_HINT = 'The new home takes over only what its line names.';
const ANOTHER_HOME = 'Begin another home';
const WHICH_STREET = 'Begin another home on the street of one of these: choose which';

/** What a question mark shows over the list, in both faces. */
export const HOMES_HELP = [
  'Each line is a home begun before, with how far it has come. Choose one to go on where it was left.',
  'A home with a plan opens at its questions; its plan can be written again at any time.',
  'A new home starts empty. On the street of a home begun before it takes over what that street shares, such as the ZIP code and what power costs, and nothing about the people.',
  'Nothing here is sent anywhere. To take a home away for good: lampkeeper forget and its name.',
] as const;

/** The homes to go on with, then another one, and one on the street of a home of which something is told. */
export function homesList(here: readonly HomeHere[]): HomesList {
  const homes = visibleNames(here);
  const goOn = homes.map(({ file }): HomesLine => ({ way: 'go-on', file }));
  const streets = withStreet(homes);
  const [only] = streets;
  const street: readonly [string, HomesLine][] =
    only === undefined
      ? []
      : streets.length === 1
        ? [[sayStreet(only), { way: 'new', like: only.file }]]
        : [[WHICH_STREET, { way: 'which-street' }]];
  return {
    title: HOMES_TITLE,
    hint: HOMES_HINT,
    labels: [...homes.map(sayHome), ANOTHER_HOME, ...street.map(([label]) => label)],
    lines: [...goOn, { way: 'new', like: null }, ...street.map(([, line]) => line)],
    homes: homes.length,
  };
}

/** The streets a new home can begin on, that of the home changed last first. */
export function streetsList(here: readonly HomeHere[]): HomesList {
  const streets = withStreet(visibleNames(here));
  return {
    title: STREETS_TITLE,
    hint: STREETS_HINT,
    labels: streets.map(({ name, street }) => `${name}: it takes over ${listed(street)}`),
    lines: streets.map(({ file }) => ({ way: 'new', like: file })),
    homes: streets.length,
  };
}

/** A file can be called anything; its name stays on its line. */
const visibleNames = (here: readonly HomeHere[]) =>
  here.map((one) => ({ ...one, name: visibleLine(one.name) }));

const withStreet = (homes: readonly HomeHere[]) =>
  homes.filter(({ street }) => street.length > 0).sort((a, b) => b.changedAt - a.changedAt);

function sayStreet({ name, street }: HomeHere): string {
  return `Begin another home on the street of ${name}: it takes over ${listed(street)}, and nothing else`;
}

/** What a home has taken over, said at its first question. */
export function sayTakenOver(street: readonly string[]): string {
  return `Taken over from the home before, as its street shares it: ${listed(street)}. Nothing else. You can change each in the list of answers.`;
}

function listed(names: readonly string[]): string {
  const last = names.at(-1) ?? '';
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
}

/** "kim: 4 answers, about 9 more to a first plan". What may come after it nobody can count before it is looked. */
export function sayHome({ name, answered, toFirstPlan, isWhole, hasPlan }: HomeHere): string {
  if (answered === null) return `${name}: this file has a fault; "lampkeeper check" says where`;
  const count = `${answered} ${answered === 1 ? 'answer' : 'answers'}`;
  const left =
    toFirstPlan > 0
      ? `about ${toFirstPlan} more to a first plan`
      : isWhole
        ? 'nothing left to ask'
        : 'enough for a first plan';
  return `${name}: ${count}, ${left}${hasPlan ? '; its plan is written' : ''}`;
}
