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

export const HOMES_TITLE = 'Homes in this folder';
export const HOMES_HINT = 'Choose one to go on with, or begin another.';
const ANOTHER_HOME = 'Begin another home';

/** The homes to choose from, and ways to begin another one. */
export interface HomesChoice {
  readonly labels: readonly string[];
  readonly choices: readonly HomeChoice[];
}

/** The lines to choose from: the homes, then another one, and one on the street of the home changed last. */
export function homesChoice(here: readonly HomeHere[]): HomesChoice {
  // A file can be called anything; its name stays on its line.
  const homes = here.map((one) => ({ ...one, name: visibleLine(one.name) }));
  const goOn = homes.map(({ file }): HomeChoice => ({ way: 'go-on', file }));
  const like = [...homes]
    .filter(({ street }) => street.length > 0)
    .sort((a, b) => b.changedAt - a.changedAt)[0];
  const another: HomeChoice = { way: 'new', like: null };
  if (like === undefined) {
    return { labels: [...homes.map(sayHome), ANOTHER_HOME], choices: [...goOn, another] };
  }
  return {
    labels: [...homes.map(sayHome), ANOTHER_HOME, sayStreet(like)],
    choices: [...goOn, another, { way: 'new', like: like.file }],
  };
}

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
