import { formatQuantity } from './format-quantity';
import { readTerms, type Term } from './read-terms';
import { tidyText } from './tidy-text';
import { canonicalUnit, type UnitWord } from './unit-words';

export interface Wanted {
  /** Unit the answer is kept in, one of those in `unit-words`. */
  readonly unit: string;
  /** Volts that turn amps typed alone into watts. */
  readonly volts?: number;
}

export type Parsed =
  /** `note` tells what was understood when the text was converted: "115 V x 7.2 A = 828 W". */
  | { readonly ok: true; readonly value: number; readonly note?: string }
  | {
      readonly ok: false;
      /** `several`: two readings at once; `words`: what follows the number could not be read. */
      readonly problem: 'empty' | 'no-number' | 'other-unit' | 'several' | 'words';
      /** The words that could not be used. */
      readonly heard?: string;
    };

/**
 * Read a number as people write it, in the wanted unit.
 * Takes "1,500", "1.5 kW", "3/4 hp", "36,000 Btu", "115 V 7.2 A", "3 days", "1h30", "$0.19".
 * Refuses two readings at once ("10-12", "115/230 V"). The value is always finite.
 */
export function parseQuantity(text: string, wanted: Wanted): Parsed {
  const unit = canonicalUnit(wanted.unit);
  const tidy = tidyText(text);
  if (tidy === '') return { ok: false, problem: 'empty' };
  const read = readTerms(tidy, unit);
  if ('problem' in read) return { ok: false, ...read };
  const { terms } = read;
  // No temperature and no year is "none".
  if (tidy === 'none' && NEVER_NONE.includes(unit.measure)) {
    return { ok: false, problem: 'no-number', heard: text.trim() };
  }
  const understood =
    terms.length === 1 ? single(terms[0]!, unit, wanted.volts) : several(terms, unit);
  if (understood !== null && Number.isFinite(understood.value)) return answer(understood, unit);
  const stranger = terms.find(
    (t) => t.unit !== null && (t.unit.measure !== unit.measure || terms.length === 1),
  );
  return stranger === undefined
    ? { ok: false, problem: terms.length > 1 ? 'several' : 'no-number', heard: text.trim() }
    : { ok: false, problem: 'other-unit', heard: stranger.unit!.unit };
}

const NEVER_NONE = ['temperature', 'year'];

/** A value in the wanted unit, and the words of the conversion where there was one. */
interface Understood {
  readonly value: number;
  readonly by?: string;
}

function answer({ value, by }: Understood, unit: UnitWord): Parsed {
  // 0.29 x 100 is 28.999999999999996 in binary; twelve digits are more than anybody types.
  const round = Number(value.toPrecision(12));
  if (by === undefined) return { ok: true, value: round };
  // "72 hours = 3 days" would say back what was typed.
  const now = unit.unit === 'h' ? `${round} h` : formatQuantity(round, unit.unit);
  return { ok: true, value: round, note: `${by} = ${now}` };
}

function single(term: Term, unit: UnitWord, volts?: number): Understood | null {
  if (term.unit === null) {
    // Nobody pays less than a cent a kWh: a bare fraction is dollars.
    // A half is half of the whole.
    if (unit.unit === '%' && FRACTION.test(term.written) && term.value <= 1) {
      return { value: term.value * 100, by: term.written };
    }
    const dollars = unit.unit === 'c/kWh' && term.value > 0 && term.value < 1;
    return dollars ? { value: term.value * 100, by: `$${term.written}` } : { value: term.value };
  }
  if (term.unit.unit === unit.unit) return { value: term.value };
  if (term.unit.measure === 'current' && unit.measure === 'power' && volts !== undefined) {
    return { value: (volts * term.value) / unit.size, by: `${volts} V x ${term.written}` };
  }
  const value = convert(term, unit);
  return value === null ? null : { value, by: term.written };
}

/** A fraction as people write or say it: "1/2", "half". */
const FRACTION = /\/|^half$/;

function several(terms: readonly Term[], unit: UnitWord): Understood | null {
  return pair(terms, unit) ?? product(terms, unit) ?? sum(terms, unit);
}

/** Volts with amps, or volts with amp-hours, in either order. */
function pair(terms: readonly Term[], unit: UnitWord): Understood | null {
  if (terms.length !== 2) return null;
  const of = (measure: string) => terms.find((t) => t.unit?.measure === measure);
  const volts = of('voltage');
  const amps = of('current');
  const charge = of('charge');
  const label = (other: Term) => `${volts!.written} x ${other.written}`;
  if (volts && amps) {
    if (unit.measure === 'power') {
      return { value: (volts.value * amps.value) / unit.size, by: label(amps) };
    }
    if (unit.measure === 'current') return { value: amps.value };
    if (unit.measure === 'voltage') return { value: volts.value };
  }
  if (volts && charge && unit.measure === 'energy') {
    return { value: (volts.value * charge.value) / 1000 / unit.size, by: label(charge) };
  }
  return null;
}

/** "3 x 100 W", "115 x 7.2" for watts, "20 ft x 15 ft" for an area. */
function product(terms: readonly Term[], unit: UnitWord): Understood | null {
  const [first, second] = terms;
  if (terms.length !== 2 || !first || !second?.times) return null;
  const by = `${first.written} x ${second.written}`;
  const bothBare = first.unit === null && second.unit === null;
  if (bothBare && unit.unit === 'W') return { value: first.value * second.value, by };
  if (unit.measure === 'area' && second.unit?.measure === 'length') {
    const sideUnit = first.unit ?? second.unit;
    if (sideUnit.measure !== 'length') return null;
    const sides = first.value * sideUnit.size * second.value * second.unit.size;
    return { value: sides / unit.size, by };
  }
  const value = first.unit === null && second.unit !== null ? convert(second, unit) : null;
  return value === null ? null : { value: first.value * value, by };
}

/** "1 h 30 min", "1h30", "2 ft 6 in": parts of one measure, the larger unit first. */
function sum(terms: readonly Term[], unit: UnitWord): Understood | null {
  if (unit.measure !== 'time' && unit.measure !== 'length') return null;
  let total = 0;
  let last = Infinity;
  const words: string[] = [];
  for (const term of terms) {
    const part = term.unit === null && last === 1 ? minutesAfterHour(term, unit) : term;
    const value = part === null || part.unit === null || term.times ? null : convert(part, unit);
    if (value === null || part!.unit!.size >= last) return null;
    total += value;
    last = part!.unit!.size;
    words.push(part!.written);
  }
  return { value: total, by: words.join(' ') };
}

function minutesAfterHour(term: Term, unit: UnitWord): Term | null {
  if (unit.measure !== 'time' || term.value >= 60) return null;
  return { ...term, unit: canonicalUnit('min'), written: `${term.written} min` };
}

function convert({ value, unit: from }: Term, to: UnitWord): number | null {
  if (from === null || from.measure !== to.measure) return null;
  // Nobody gives an age in minutes: "30 m" is meant otherwise.
  if (to.unit === 'years' && from.size < 1) return null;
  return (value * from.size + (from.offset ?? 0) - (to.offset ?? 0)) / to.size;
}
