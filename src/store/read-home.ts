import {
  type Document,
  isMap,
  isScalar,
  isSeq,
  type LineCounter,
  type Node,
  type Pair,
} from 'yaml';
import { type Answer, NOT_SURE } from '../interview/answers';
import { checkTyped, outside } from '../interview/check-answer';
import type { Interview, Question } from '../interview/questions/question';
import type { Unfinished } from '../interview/unfinished';
import { parseQuantity } from '../quantity/parse-quantity';
import { type Disk, realDisk } from './disk';
import { type Fault, HOME_KEY, HOME_VERSION, TARIFF_BLOCK, UNFINISHED_KEY } from './home-file';
import { parseYaml } from './parse-yaml';
import { type PlaceIn, placeIn } from './place-in';
import { readText } from './read-text';
import { readUnfinished } from './read-unfinished';
import { saySystemError } from './say-system-error';

export type ReadHome =
  | {
      readonly ok: true;
      readonly asOf: string | null;
      readonly answers: Record<string, Answer>;
      readonly unfinished: Unfinished;
      /** The household's own tariff as plain data, not yet checked, where the file holds one. */
      readonly ownTariff?: { readonly data: unknown; readonly placeOf: PlaceIn };
      /** Keys that are not ours: kept in the file, and of no meaning to us. */
      readonly remarks?: readonly Fault[];
    }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** Read a home file. Never throws: a file that cannot be read, or is not sound, comes back as faults. */
export function readHome(path: string, interview: Interview, disk: Disk = realDisk): ReadHome {
  try {
    return parseHome(readText(path, disk), interview);
  } catch (error) {
    return faulty(saySystemError(error, 'read', path));
  }
}

/** The answers in a home file's text, or every fault in it with its place and remedy. */
export function parseHome(text: string, interview: Interview): ReadHome {
  const parsed = parseYaml(text);
  if (parsed === null) return faulty(NO_YAML);
  const { doc, counter, faults } = parsed;
  if (faults.length > 0) return { ok: false, faults };
  const reader = new HomeReader(counter, interview);
  try {
    reader.readTop(doc);
  } catch {
    // Aliases are of no use here and can be made to blow up; the reader then stops.
    return faulty(NO_YAML);
  }
  if (reader.faults.length > 0) return { ok: false, faults: reader.faults };
  const { asOf, answers, unfinished, tariff, remarks } = reader;
  return {
    ok: true,
    asOf,
    answers,
    unfinished,
    ...(tariff === null ? {} : { ownTariff: { data: tariff, placeOf: placeIn(doc, counter) } }),
    ...(remarks.length === 0 ? {} : { remarks }),
  };
}

/** First key of a plan file: it is often taken for the home file beside it. */
const PLAN_KEY = 'lampkeeperPlan';

const NO_YAML =
  'this text could not be read as YAML. Start again from a file that lampkeeper wrote.';

class HomeReader {
  readonly faults: Fault[] = [];
  readonly remarks: Fault[] = [];
  readonly answers: Record<string, Answer> = Object.create(null);
  readonly unfinished: Record<string, string | readonly string[]> = {};
  asOf: string | null = null;
  tariff: unknown = null;

  private readonly questions: ReadonlyMap<string, Question>;

  constructor(
    private readonly counter: LineCounter,
    private readonly interview: Interview,
  ) {
    this.questions = new Map(interview.questions.map((question) => [question.id, question]));
  }

  fault(offset: number, says: string, list = this.faults): void {
    const { line, col } = this.counter.linePos(offset);
    list.push({ line: Math.max(1, line), column: Math.max(1, col), says });
  }

  readTop(doc: Document.Parsed): void {
    const { contents } = doc;
    if (!isMap(contents)) {
      this.fault(
        0,
        `a home file starts with "${HOME_KEY}: ${HOME_VERSION}". Add that line at the top.`,
      );
      return;
    }
    const seen = new Set<string>();
    for (const pair of contents.items) {
      const key = keyOf(pair);
      seen.add(key);
      if (key === HOME_KEY) this.readVersion(pair);
      else if (key === 'asOf') this.readAsOf(pair);
      else if (key === 'answers') this.readQuestions(pair, this.readAnswer);
      else if (key === UNFINISHED_KEY) this.readQuestions(pair, this.readBegun);
      else if (key === TARIFF_BLOCK) this.readTariff(pair, doc);
      else
        this.fault(
          at(pair.key),
          `"${key}" is not read. It stays in the file and changes no plan. What is read: ${HOME_KEY}, asOf, ${TARIFF_BLOCK}, answers, ${UNFINISHED_KEY}.`,
          this.remarks,
        );
    }
    if (seen.has(PLAN_KEY)) {
      this.fault(0, 'this is a plan, not a home. Use the home file it was made from.');
      return;
    }
    if (!seen.has(HOME_KEY))
      this.fault(0, `"${HOME_KEY}: ${HOME_VERSION}" is missing. Add it as the first line.`);
    if (!seen.has('answers'))
      this.fault(0, '"answers:" is missing. Add it, with the answers indented below.');
  }

  private readVersion(pair: Pair): void {
    const value = scalarOf(pair.value);
    if (value === HOME_VERSION) return;
    this.fault(
      at(pair.value ?? pair.key),
      typeof value === 'number' && Number.isInteger(value)
        ? `this file is of form ${value}; this program reads form ${HOME_VERSION}. Use the program that wrote it, or start a new home.`
        : `the form of this file is a number. Write "${HOME_KEY}: ${HOME_VERSION}".`,
    );
  }

  private readAsOf(pair: Pair): void {
    const value = scalarOf(pair.value);
    if (typeof value === 'string' && isDay(value)) this.asOf = value;
    else this.fault(at(pair.value ?? pair.key), 'asOf must be a day such as "2026-11-25".');
  }

  private readTariff(pair: Pair, doc: Document.Parsed): void {
    if (!isMap(pair.value)) {
      this.fault(
        at(pair.value ?? pair.key),
        'tariff must be lines of "key: value", indented; leave the key out when there is none.',
      );
      return;
    }
    this.tariff = pair.value.toJS(doc, { maxAliasCount: 0 });
  }

  private readQuestions(pair: Pair, read: (question: Question, pair: Pair) => void): void {
    if (pair.value === null || (isScalar(pair.value) && pair.value.value === null)) return;
    if (!isMap(pair.value)) {
      this.fault(at(pair.value), `${keyOf(pair)} must be lines of "question: answer", indented.`);
      return;
    }
    for (const line of pair.value.items) {
      const id = keyOf(line);
      const question = this.questions.get(id);
      if (question !== undefined) read(question, line);
      else if (this.interview.retired.includes(id))
        this.fault(
          at(line.key),
          `"${id}" is no longer asked. It stays in the file and changes no plan.`,
          this.remarks,
        );
      else
        this.fault(at(line.key), `no question is called "${id}". ${nearest(id, this.interview)}`);
    }
  }

  private readonly readAnswer = (question: Question, pair: Pair): void => {
    const read = readValue(question, pair.value as Node | null);
    if ('says' in read) this.fault(at(pair.value ?? pair.key), read.says);
    else this.answers[question.id] = read.answer;
  };

  private readonly readBegun = (question: Question, pair: Pair): void => {
    const read = readUnfinished(question, pair.value as Node | null);
    if ('says' in read) this.fault(at(pair.value ?? pair.key), read.says);
    else this.unfinished[question.id] = read.begun;
  };
}

type Value = { answer: Answer } | { says: string };

function readValue(question: Question, node: Node | null): Value {
  if (isSeq(node)) {
    if (node.items.some((item) => scalarOf(item) === undefined))
      return {
        says: `the list of "${question.id}" holds something that is no single word or number`,
      };
    const items = node.items.map((item) => String(scalarOf(item)));
    if (question.kind === 'numbers') return typedOf(question, items.join('; '));
    return question.kind === 'choices'
      ? choicesOf(question, items)
      : { says: `"${question.id}" takes one answer, not a list.` };
  }
  const value = scalarOf(node);
  if (value === NOT_SURE) return { answer: NOT_SURE };
  if (value === null || value === undefined || typeof value === 'object') {
    return { says: `"${question.id}" has no answer. Write one, or write: not sure` };
  }
  switch (question.kind) {
    case 'choices':
      return choicesOf(question, [String(value)]);
    case 'choice':
      return choiceOf(question, String(value));
    case 'number':
      return numberOf(question, value);
    default:
      return typedOf(question, String(value));
  }
}

function typedOf(question: Question, text: string): Value {
  const checked = checkTyped(question, text);
  return checked.ok ? { answer: checked.value } : { says: checked.message };
}

function choiceOf(question: Question, id: string): Value {
  const ids = question.choices!.map((choice) => choice.id);
  if (ids.includes(id)) return { answer: id };
  return {
    says: `"${id}" is not an answer to "${question.id}". Write one of: ${ids.join(', ')}, not sure`,
  };
}

function choicesOf(question: Question, items: string[]): Value {
  if (items.includes(NOT_SURE)) return { says: 'write "not sure" alone, without a list' };
  const wrong = items.map((id) => choiceOf(question, id)).find((read) => 'says' in read);
  if (wrong !== undefined) return wrong;
  const alone = question.choices!.find((c) => c.alone && items.includes(c.id) && items.length > 1);
  if (alone !== undefined)
    return { says: `"${alone.id}" stands alone. Leave it out, or leave the others out.` };
  return { answer: [...new Set(items)] };
}

function numberOf(question: Question, value: unknown): Value {
  const unit = question.unit!;
  const read = parseQuantity(String(value), { unit, volts: question.volts });
  if (!read.ok)
    return { says: `"${String(value)}" is not a number in ${unit}. Write it like: 12 ${unit}` };
  const wrong = outside(question, read.value);
  return wrong === null ? { answer: read.value } : { says: wrong };
}

/** A key as it stands; one that is itself a list or a group of lines is no word of ours. */
function keyOf({ key }: Pair): string {
  return isScalar(key) ? String(key.value) : '[...]';
}

function scalarOf(node: unknown): unknown {
  return isScalar(node)
    ? node.value
    : (node as { source?: unknown } | null)?.source === undefined
      ? undefined
      : null;
}

function at(node: unknown): number {
  return (node as Node | null)?.range?.[0] ?? 0;
}

function faulty(says: string): ReadHome {
  return { ok: false, faults: [{ line: 1, column: 1, says }] };
}

/** A real day of the calendar, written YYYY-MM-DD. */
export function isDay(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const day = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text);
}

/** The question whose id is nearest to a mistyped one. */
function nearest(id: string, interview: Interview): string {
  const known = interview.questions.find((q) => q.id.startsWith(id.slice(0, 4)) && id.length >= 4);
  const hint = known === undefined ? '' : `Did you mean "${known.id}"? `;
  return `${hint}"lampkeeper schema home" lists them all.`;
}
