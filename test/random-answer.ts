import type { Answer } from '../src/interview/answers';
import { outside } from '../src/interview/check-answer';
import { holds } from '../src/interview/questions/holds';
import type { Question } from '../src/interview/questions/question';
import type { Known } from '../src/interview/questions/resolve';

export type Random = () => number;

export interface Draw {
  readonly random: Random;
  /** What this home has told so far. */
  readonly known: Map<string, Known>;
  /** How often it answers as many homes would, where that is listed. */
  readonly commonShare: number;
  /** No number out of the ordinary. */
  readonly usualOnly?: boolean;
}

/** Lists of ticks in which nothing is ticked more often than elsewhere. Our judgement. */
const rare: Readonly<Record<string, number>> = {
  'now-danger': 0.85,
  'medical-devices': 0.7,
  measured: 0.8,
};

/** What many homes are, so that routes with wires and fuel are open in enough of them. Our judgement. */
const common: Readonly<Record<string, readonly string[]>> = {
  'home-kind': ['house'],
  'home-tenure': ['own'],
  'engine-place': ['open-20ft'],
  'battery-place': ['utility-room', 'attached-garage', 'outside-wall'],
  'panel-signs': ['none'],
  'panel-kind': ['main-breaker'],
  'flood-history': ['never'],
  operators: ['one', 'two'],
  permissions: ['none'],
};

/** From the coldest winters to hot ones, high and low, with a code of three digits and two that stand for no place. */
export const zips = [
  ...['94110', '48911', '70364', '55731', '85031', '98122', '33101', '80435', '04736'],
  ...['99701', '96813', '10027', '73301', '59715', '28801', '606', '00000', '96201'],
];

/** Sentences of associations, made up, and what could break a paper if it were obeyed. */
export const texts = [
  'No generator may be operated on the grounds between 10 pm and 7 am.',
  'Work outside needs the written approval of the board.',
  '**No** `noise` [here](x) <b>of any kind</b> | see # 12, "page" 3',
];

/** An answer a household could give to this question, by what it has told already. */
export function answerTo(question: Question, draw: Draw): Answer {
  const { random, known, commonShare } = draw;
  if (question.kind === 'zip') return pick(zips, random);
  if (question.kind === 'name') return 'random-home';
  if (question.kind === 'text') return pick(texts, random);
  if (question.kind === 'number') return number(question, draw);
  if (question.kind === 'numbers') {
    return Array.from({ length: question.count! }, () => number(question, draw));
  }
  const offered = question.choices!.filter((c) => c.when === undefined || holds(c.when, known));
  const usual = offered.filter((c) => common[question.id]?.includes(c.id));
  const choices = usual.length > 0 && random() < commonShare ? usual : offered;
  if (question.kind === 'choice') return pick(choices, random).id;
  const alone = choices.filter((c) => c.alone);
  const others = choices.filter((c) => !c.alone);
  const none = alone.length > 0 && random() < (rare[question.id] ?? 0.4);
  if (none || others.length === 0) return [pick(alone, random).id];
  const most = 1 + Math.floor(random() ** 2 * others.length);
  const ticked = new Set(Array.from({ length: most }, () => pick(others, random).id));
  return others.map((c) => c.id).filter((id) => ticked.has(id));
}

/** Mostly a usual number, now and then any possible one, its ends among them; whole where the question wants that. */
function number(question: Question, { random, usualOnly }: Draw): number {
  const chance = usualOnly ? 0.9 * random() : random();
  const [low, high] = (chance < 0.9 ? question.usual : null) ?? question.possible!;
  if (chance > 0.98) return low;
  if (chance > 0.96) return high;
  const any = low + (high - low) * random();
  const rounded = Number(any.toPrecision(3));
  const within = Math.min(high, Math.max(low, rounded));
  return outside(question, within) === null ? within : Math.round(any);
}

export function pick<T>(list: readonly T[], random: Random): T {
  return list[Math.floor(random() * list.length)]!;
}
