import { parseQuantity } from '../../quantity/parse-quantity';
import { unitWords } from '../../quantity/unit-words';
import { vaAsPrinted } from './amps-as-printed';
import type { ChoiceInput, Input, ListInput, NumberInput, TextInput } from './calculation';
import { sayValue } from './say-value';
import type { NamedValue, Value } from './values';

export type Read = { readonly ok: true; readonly value: Value } | { ok: false; says: string };

/** One input as typed, understood in its unit; a sentence where it cannot be. */
export function readInput(input: Input, text: string): Read {
  switch (input.kind) {
    case 'number':
      return readNumberInput(input, text);
    case 'choice':
      return readChoice(input, text);
    case 'text':
      return readText(input, text);
    case 'list':
      return readList(input, text);
  }
}

function readNumberInput(input: NumberInput, text: string): Read {
  const { key, unit, from, to } = input;
  const value = numberIn(text, unit);
  if (value === null) return no(`${key}: "${text}" is not a number ${wantedAs(unit)}`);
  if (value < from || value > to) {
    const given = sayValue(value, unit);
    return no(`${key} must be from ${sayValue(from, unit)} to ${sayValue(to, unit)}, not ${given}`);
  }
  if (input.whole && !Number.isInteger(value)) return no(`${key} must be a whole number`);
  return { ok: true, value };
}

/** A unit that quantities do not know may follow its number as it stands; the number is then read alone. */
function numberIn(text: string, unit: string): number | null {
  const printed = unit === 'VA' ? vaAsPrinted(text) : null;
  if (printed !== null) return printed;
  const known = unitWords.some((word) => word.unit === unit);
  const bare = !known && unit !== '' && text.trim().endsWith(unit);
  const number = bare ? text.trim().slice(0, -unit.length) : text;
  const read = parseQuantity(number, { unit: known ? unit : 'count' });
  return read.ok ? read.value : null;
}

function readChoice({ key, choices }: ChoiceInput, text: string): Read {
  const wanted = text.trim().toLowerCase();
  const value = choices.find((choice) => choice.toLowerCase() === wanted);
  return value === undefined
    ? no(`${key} must be ${choices.join(' or ')}, not "${text}"`)
    : { ok: true, value };
}

function readText({ key, pattern, form }: TextInput, text: string): Read {
  const value = text.trim();
  return pattern.test(value)
    ? { ok: true, value }
    : no(`${key}: write it as ${form}, not "${text}"`);
}

/** "water heater 4.5 kW; dishwasher 1200 W": the quantity is the longest end of each part that reads as one. */
function readList(input: ListInput, text: string): Read {
  const list: NamedValue[] = [];
  for (const part of text.split(';').filter((p) => p.trim() !== '')) {
    const found = nameAndValue(part.trim(), input.unit);
    if (found === null) {
      return no(
        `${input.key}: "${part.trim()}" is not a name with a number ${wantedAs(input.unit)}`,
      );
    }
    if (found.value < 0 || found.value > input.to) {
      return no(`${input.key}: ${found.name} must be from 0 to ${sayValue(input.to, input.unit)}`);
    }
    list.push(found);
  }
  return list.length > 0 ? { ok: true, value: list } : no(`${input.key} is empty`);
}

function nameAndValue(part: string, unit: string): NamedValue | null {
  const words = part.split(/\s+/);
  for (let i = 0; i < words.length; i++) {
    const value = numberIn(words.slice(i).join(' '), unit);
    if (value !== null)
      return { name: words.slice(0, i).join(' ').replace(/:$/, '') || part, value };
  }
  return null;
}

/** Amps alone do not tell the power: a label prints the volts beside them. */
function wantedAs(unit: string): string {
  if (unit === 'VA') return 'of VA, nor amps with their volts ("8 A 115 V")';
  return unit ? `of ${unit}` : '';
}

const no = (says: string): Read => ({ ok: false, says: `${says.trim()}.` });
