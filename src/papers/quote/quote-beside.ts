import type { Plan } from '../../plan/plan';
import type { Beside } from '../../plan/quote/lay-beside';
import type { Quote } from '../../plan/quote/quote';
import type { Words } from '../../words/words';
import { type Block, section } from '../document/block';

/** A quote beside the plan: what it lacks first, then line by line. */
export function quoteBeside(plan: Plan, quote: Quote, laid: Beside, words: Words): Block[] {
  const say = words.quotes;
  const names = (ids: Beside['missed']['must']) => ids.map((id) => words.loadName(plan.home, id));
  const missed = { devices: names(laid.missed.devices), must: names(laid.missed.must) };
  const leftOut = names(quote.leavesOut ?? []);
  return [
    { kind: 'say', text: say.against(words.routeTitle(plan.advice.route.called)) },
    ...(plan.state === 'draft' ? [{ kind: 'say', text: say.draft } satisfies Block] : []),
    ...section(say.cautions, {
      kind: 'bullets',
      items: laid.cautions.map(({ code, rule }) =>
        [
          say.caution(code, missed),
          ...(rule === null ? [] : [words.rules[rule].saysIfOpen ?? words.rules[rule].says]),
        ].join(' '),
      ),
    }),
    ...section(say.lines, {
      kind: 'steps',
      items: laid.lines.map((line) =>
        say.line(line, quote, { transferAsked: laid.transferAsked, leftOut }),
      ),
    }),
    { kind: 'say', text: say.after },
  ];
}
