/** A home begun before, and how far it has come. */
export interface HomeHere {
  readonly name: string;
  readonly file: string;
  /** Null where the file cannot be read. */
  readonly answered: number | null;
  /** Questions still open, judged as if each were answered "not sure". */
  readonly open: number;
  readonly hasPlan: boolean;
}

/** What somebody chose of the homes here: one to go on with, a new one, or to leave. */
export type HomeChoice =
  | { readonly way: 'go-on'; readonly file: string }
  | { readonly way: 'new' }
  | { readonly way: 'leave'; readonly interrupted: boolean };

export const HOMES_TITLE = 'Homes in this folder';
export const HOMES_HINT = 'Choose one to go on with, or begin another.';
export const ANOTHER_HOME = 'Begin another home';

/** "kim: 34 answers, about 40 questions left". */
export function sayHome({ name, answered, open, hasPlan }: HomeHere): string {
  if (answered === null) return `${name}: this file has a fault; "lampkeeper check" says where`;
  const count = `${answered} ${answered === 1 ? 'answer' : 'answers'}`;
  const left =
    open === 0
      ? 'nothing left to ask'
      : `about ${open} ${open === 1 ? 'question' : 'questions'} left`;
  return `${name}: ${count}, ${left}${hasPlan ? '; its plan is written' : ''}`;
}
