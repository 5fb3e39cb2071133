/** Shorter ones are labels and not sentences. */
const LEAST_WORDS = 5;

/** A sentence that stands more than once in a paper, with the parts it stands in. */
export interface SaidTwice {
  readonly sentence: string;
  readonly parts: readonly string[];
}

/** Sentences of a Markdown paper that stand in it more than once, tables left out. */
export function saidTwice(markdown: string): SaidTwice[] {
  const found = new Map<string, string[]>();
  for (const { heading, text } of partsOf(markdown))
    for (const sentence of sentencesOf(text))
      found.set(sentence, [...(found.get(sentence) ?? []), heading]);
  return [...found].flatMap(([sentence, parts]) => (parts.length > 1 ? [{ sentence, parts }] : []));
}

function partsOf(markdown: string): { heading: string; text: string }[] {
  return markdown.split(/^(?=## )/m).map((text) => ({
    heading: /^## (.*)/.exec(text)?.[1] ?? '',
    text: text.replace(/^#+ .*$/gm, ''),
  }));
}

function sentencesOf(text: string): string[] {
  return text
    .split(/\n\s*\n|\n(?=- |\d+\. |\|)/)
    .map((line) => line.replace(/\s+/g, ' ').replace(/^(- (\[ \] )?|\d+\. (\[ \] )?)/, ''))
    .filter((line) => !line.startsWith('|'))
    .flatMap((line) => line.split(/(?<=[.!?])\s+(?=[A-Z"])/))
    .map((sentence) => sentence.trim())
    .filter((sentence) => sentence.split(' ').length >= LEAST_WORDS);
}

/** Parts with an entry for each route, measure or line of a list: what holds of two of them is said of each. */
const entryByEntry: readonly string[] = [
  'Need less first', // what each way costs and who may do it
  'What each dollar buys', // whether each line does what was asked
  'The routes side by side', // what each route leaves out and why
  'How it rides through', // the odds of each route
  'What goes off, in which order', // what each step buys
  'Does it pay', // what each route costs
  'What is there already', // what each source there can do
  'What would be possible, if', // each carries its deadly cautions whole
];

/** Parts that may say what another says: the reason why. */
const pairs: readonly (readonly [string, string])[] = [
  // A route that is only possible is read with what can kill on it, and never without.
  ['What would be possible, if', 'Cautions'],
  // The bill is looked at where its lines are counted; that it does not fit is settled first of all.
  ['Settle these first: two answers do not fit together', 'Does it pay'],
  // A generator run by a timetable is told of nowhere without what to look at while it rests.
  ['Ways on', 'The one advised'],
];

/** It has a reason to stand twice: in each entry of a list of routes, or with what can kill on a route. */
export function mayBeTwice({ parts }: SaidTwice): boolean {
  const [one, ...others] = [...new Set(parts)];
  if (others.length === 0) return entryByEntry.includes(one!);
  return (
    others.length === 1 &&
    pairs.some(
      ([a, b]) =>
        (isPart(one!, a) && isPart(others[0]!, b)) || (isPart(one!, b) && isPart(others[0]!, a)),
    )
  );
}

/** Behind a colon a heading names the route. */
const isPart = (heading: string, part: string) =>
  heading === part || heading.startsWith(`${part}: `);
