import { parseQuantity } from '../../quantity/parse-quantity';

const AMPS_FIRST = /^([\d.,]+\s*(?:a|amps?))\s*(?:at|,|x)?\s*([\d.,]+\s*(?:v|volts?))$/i;
const VOLTS_FIRST = /^([\d.,]+\s*(?:v|volts?))\s*(?:at|,|x)?\s*([\d.,]+\s*(?:a|amps?))$/i;

/** VA of a label that gives amps and volts, in either order ("24 A 240 V", "115 V, 8 amps"); null for anything else. */
export function vaAsPrinted(text: string): number | null {
  const first = AMPS_FIRST.exec(text.trim());
  const second = VOLTS_FIRST.exec(text.trim());
  const amps = parse(first?.[1] ?? second?.[2], 'A');
  const volts = parse(first?.[2] ?? second?.[1], 'V');
  return amps === null || volts === null ? null : amps * volts;
}

function parse(text: string | undefined, unit: 'A' | 'V'): number | null {
  if (text === undefined) return null;
  const read = parseQuantity(text, { unit });
  return read.ok ? read.value : null;
}
