import interview from '#compiled/questions.js';
import { isSource } from '../kinds/ask-traits';
import { traitsOf } from '../kinds/route-traits';
import type { Block } from '../papers/document/block';
import { blocksToMarkdown } from '../papers/document/to-markdown';
import { blankQuote } from '../papers/quote/blank-quote';
import { plansBeside } from '../papers/quote/plans-beside';
import { quoteBeside } from '../papers/quote/quote-beside';
import { makePlan } from '../plan/make-plan';
import type { Plan } from '../plan/plan';
import { layBeside } from '../plan/quote/lay-beside';
import type { Quote } from '../plan/quote/quote';
import { nearWord } from '../quantity/near-word';
import { visible } from '../quantity/visible';
import { nameOfFile } from '../store/home-file';
import { QUOTE_KEY, QUOTE_VERSION } from '../store/quote-key';
import { readQuote } from '../store/read-quote';
import { readYamlFile } from '../store/read-yaml-file';
import type { Words } from '../words/words';
import { wordsIn } from '../words/words-in';
import { DONE, FAILED, WRONG_USAGE } from './exit-codes';
import { homeFromFile } from './home-from-file';
import { printErr, printOut } from './print';
import { PLANNING, withProgress } from './progress';
import type { Arguments } from './read-arguments';

/** `lampkeeper compare HOME QUOTE`: a quote that came back, or a second home, laid beside the plan. */
export async function compareCommand(args: Arguments): Promise<number> {
  const [path, beside, ...more] = args.rest;
  const few = args.blank ? beside !== undefined : beside === undefined;
  if (path === undefined || few || more.length > 0) {
    printErr(
      'compare takes a home and a quote, or a home and --blank: lampkeeper compare kim kim.quote.yaml\n',
    );
    return WRONG_USAGE;
  }
  const words = await wordsIn('en');
  const planned = await planOf(path, args.asOf);
  if (typeof planned === 'string') return failed(planned);
  if (planned.undecided.length > 0) return failed(words.quotes.tooEarly);
  if (beside !== undefined && isHome(beside)) {
    const other = await planOf(beside, args.asOf);
    if (typeof other === 'string') return failed(other);
    const blocks = plansBeside(planned, other, words);
    return printed(words.quotes.twoPlans.title(planned.name, other.name), blocks);
  }
  if (!isSource(traitsOf[planned.advice.route.kind])) return failed(words.quotes.nothing);
  if (beside === undefined) {
    printOut(visible(blankQuote(planned, `${QUOTE_KEY}: ${QUOTE_VERSION}`, words)));
    return DONE;
  }
  const read = readQuote(beside);
  if (!read.ok) return failed(read.says);
  const quote = withLoads(planned, read.quote, words);
  if (typeof quote === 'string') return failed(`${beside}: ${quote}`);
  const blocks = quoteBeside(planned, quote, layBeside(planned, quote), words);
  return printed(words.quotes.title(planned.name), blocks);
}

/** The plan of a home file; what is wrong with it as text. */
async function planOf(path: string, asOf: string | null): Promise<Plan | string> {
  const home = await homeFromFile(path, asOf);
  if (!home.ok) return home.says;
  const answers = { ...home.answers, 'home-name': nameOfFile(path) };
  return withProgress(PLANNING, () =>
    makePlan(interview, answers, home.asOf, undefined, home.tariff),
  );
}

/** A file with answers in it is a home; anything else is read as a quote, which says what it lacks. */
function isHome(path: string): boolean {
  const file = readYamlFile(path);
  return (
    file.ok &&
    typeof file.data === 'object' &&
    file.data !== null &&
    !Object.hasOwn(file.data, QUOTE_KEY) &&
    Object.hasOwn(file.data, 'answers')
  );
}

type Read = Extract<ReturnType<typeof readQuote>, { ok: true }>['quote'];

/** The quote with what it leaves out as circuits of this plan; a name that is none is said. */
function withLoads(plan: Plan, quote: Read, words: Words): Quote | string {
  const ids = plan.home.loads.map(({ id }) => id);
  const strange = quote.leavesOut?.find((name) => !(ids as string[]).includes(name));
  if (strange !== undefined) return words.quotes.unknownLoad(strange, nearWord(strange, ids));
  const leavesOut = quote.leavesOut && ids.filter((id) => quote.leavesOut!.includes(id));
  return { ...quote, leavesOut };
}

function printed(title: string, blocks: readonly Block[]): number {
  printOut(`${visible(`## ${title}\n\n${blocksToMarkdown(blocks)}`)}\n`);
  return DONE;
}

function failed(says: string): number {
  printErr(`${says}\n`);
  return FAILED;
}
