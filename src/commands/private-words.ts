import type { Interview, PrivateKind } from '../interview/questions/question';

const KIND_WORDS: Readonly<Record<PrivateKind, string>> = {
  name: 'the name of the files',
  people: 'who lives there and their health',
  place: 'where the home is',
  money: 'bills and money',
};

/** One line for each kind of private thing that is there. */
export function privateWords(
  interview: Interview,
  found: Readonly<Record<PrivateKind, readonly string[]>>,
  hasTariff: boolean,
): string[] {
  const says = (id: string) => interview.questions.find((one) => one.id === id)?.says ?? id;
  return (Object.keys(KIND_WORDS) as PrivateKind[]).flatMap((kind) => {
    const names = found[kind].map(says);
    const all = kind === 'money' && hasTariff ? [...names, 'the tariff'] : names;
    return all.length === 0 ? [] : [`Private, ${KIND_WORDS[kind]}: ${all.join('; ')}.`];
  });
}
