import { formatBounds, formatQuantity } from '../quantity/format-quantity';
import { parseList } from '../quantity/parse-list';
import { type Parsed, parseQuantity } from '../quantity/parse-quantity';
import { visibleLine } from '../quantity/visible';
import type { Answer } from './answers';
import { graphemes } from './keys/text-field';
import { exampleFor } from './questions/example-for';
import type { Question } from './questions/question';
import { sayUnit, words } from './words';

type Refused = Extract<Parsed, { ok: false }>;

/** What became of something typed: an answer, an answer to ask back once, or a sentence that says what to do. */
export type Checked =
  | { readonly ok: true; readonly value: Answer; readonly note?: string; readonly unusual: boolean }
  | { readonly ok: false; readonly message: string };

/** Check a typed answer to a question of any kind without choices. */
export function checkTyped(question: Question, typed: string): Checked {
  const text = typed.trim();
  if (question.kind === 'zip') return checkZip(text);
  if (question.kind === 'name') return checkName(text);
  if (question.kind === 'text') return checkText(question, text);
  if (question.kind === 'numbers') return checkNumbers(question, text);
  return checkNumber(question, text);
}

function checkNumber(question: Question, text: string): Checked {
  const unit = question.unit ?? 'count';
  const read = parseQuantity(text, { unit, volts: question.volts });
  if (!read.ok) {
    return no(refusal(question, text, read));
  }
  const wrong = outside(question, read.value);
  if (wrong !== null) return no(wrong);
  const [low, high] = question.usual ?? question.possible!;
  const unusual = read.value < low || read.value > high;
  return { ok: true, value: read.value, note: read.note, unusual };
}

function checkNumbers(question: Question, text: string): Checked {
  const [unit, count] = [question.unit!, question.count!];
  const read = parseList(text, { unit, count });
  if (!read.ok) {
    if (read.problem === 'empty') return no(words.emptyList(question.says, count, sayUnit(unit)));
    if (read.problem === 'count') return no(words.listCount(question.says, read.found, count));
    return no(words.noNumberInList(question.says, read.heard, count));
  }
  const [low, high] = question.possible!;
  const at = read.values.findIndex((value) => value < low || value > high);
  if (at < 0) return { ok: true, value: read.values, unusual: false };
  const say = (value: number) => formatQuantity(value, unit);
  return no(
    words.outOfRangeInList(
      question.says,
      at + 1,
      say(read.values[at]!),
      formatBounds(low, high, unit),
    ),
  );
}

/** What to do about a text that is no number of this question. */
function refusal(question: Question, typed: string, { problem, heard = '' }: Refused): string {
  const { says, unit = 'count' } = question;
  const example = exampleFor(question);
  switch (problem) {
    case 'empty':
      return words.empty.number(says, unit);
    case 'other-unit':
      return words.otherUnit(typed, says, unit, example);
    case 'several':
      if (DECIMAL_COMMA.test(typed)) {
        return words.decimalComma(typed, says, typed.replace(',', '.'));
      }
      return words.severalNumbers(typed, says, example);
    case 'words':
      return words.strangeWords(heard, typed, says, unit, example);
    case 'no-number':
      return words.noNumber(typed, says, unit, example);
  }
}

/** "3,5": a comma where a point is meant; three digits behind it are thousands. */
const DECIMAL_COMMA = /^-?\d+,\d{1,2}$/;

/** A sentence when a number cannot be an answer to the question, else null. */
export function outside(question: Question, value: number): string | null {
  const [low, high] = question.possible!;
  const unit = question.unit!;
  if (value < low || value > high) {
    const say = question.nameplate === true ? words.labelOutOfRange : words.outOfRange;
    return say(question.says, formatBounds(low, high, unit));
  }
  const whole = question.decimals !== true && ['count', 'people', 'year'].includes(unit);
  return whole && !Number.isInteger(value) ? words.wholeNumber(question.says) : null;
}

/** Kept as it was typed, on one line, with what nobody can see in it made visible. Nothing is read out of it. */
function checkText({ says, longest }: Question, text: string): Checked {
  const line = visibleLine(text.replace(/\s+/g, ' '));
  if (line === '') return no(words.empty.text(says));
  const letters = graphemes(line).length;
  if (letters > longest!) return no(words.textTooLong(says, letters, longest!));
  return { ok: true, value: line, unusual: false };
}

function checkZip(text: string): Checked {
  if (text === '') return no(words.empty.zip);
  // A helper who keeps as little as may be writes the first three digits: they are enough for weather and state.
  const digits = /^(\d{5}(?=-\d{4}$|$)|\d{3}$)/.exec(text)?.[1];
  return digits === undefined ? no(words.zipShape) : { ok: true, value: digits, unusual: false };
}

function checkName(text: string): Checked {
  if (text === '') return no(words.empty.name);
  const name = text.toLowerCase().replace(/[\s_]+/g, '-');
  if (!/^[a-z0-9][a-z0-9-]{0,23}$/.test(name)) return no(words.nameShape);
  if (HELD_NAMES.test(name)) return no(words.nameHeld(name));
  return { ok: true, value: name, unusual: false };
}

/** Names of devices on Windows, whatever stands behind a dot. */
const HELD_NAMES = /^(con|prn|aux|nul|com\d|lpt\d)$/;

function no(message: string): Checked {
  return { ok: false, message };
}
