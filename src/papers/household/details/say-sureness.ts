import type { Plan } from '../../../plan/plan';
import type { Words } from '../../../words/words';

/** Where the weather comes from, what outages to expect and how weak that evidence is. */
export function saySureness(plan: Plan, words: Words): string[] {
  const { place } = plan.home.site;
  const say = words.household.sureness;
  return [
    `## ${say.title}`,
    words.place(place).join(' '),
    say.weather(plan),
    say.outages(plan.outlook),
    say.sources(words.cites(plan.sources).length),
  ];
}
