import type { Plan } from '../../plan/plan';
import type { QuoteLine } from '../../plan/quote/quote';
import type { Words } from '../../words/words';
import { folded } from '../pictures/folded';

const COLUMNS = 76;

/**
 * A quote file to fill in, as YAML: every line behind a mark, so that one left alone counts as not said.
 * @param first its first line, by which the form is known
 */
export function blankQuote({ home, advice }: Plan, first: string, words: Words): string {
  const say = words.quotes.blank;
  const circuits = home.loads.filter(({ id }) => advice.route.carries.includes(id));
  const lines = Object.entries(say.lines) as [QuoteLine, string][];
  return [
    ...folded(say.head, COLUMNS).map((line) => `# ${line}`),
    first,
    ...lines.map(([key, says]) => `#${key}: # ${says}`),
    ...(circuits.length === 0
      ? []
      : [
          `# ${say.circuits}`,
          ...circuits.map(({ id, called }) => `#   ${id}: ${words.called(called)}`),
        ]),
    '',
  ].join('\n');
}
