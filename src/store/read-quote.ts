import type { z } from 'zod';
import { type Fault, sayFaults } from './home-file';
import { QUOTE_KEY, QUOTE_VERSION } from './quote-key';
import { type QuoteRead, quoteSchema } from './quote-schema';
import { readYamlFile } from './read-yaml-file';

export type ReadQuote =
  | { readonly ok: true; readonly quote: QuoteRead }
  | { readonly ok: false; readonly says: string; readonly faults: readonly Fault[] };

/** A quote file, or every fault in it with line, column and what to do. */
export function readQuote(path: string): ReadQuote {
  const file = readYamlFile(path);
  if (!file.ok) return { ok: false, says: sayFaults(path, file.faults), faults: file.faults };
  const { [QUOTE_KEY]: version, ...rest } = asLines(file.data);
  const first = `${QUOTE_KEY}: ${QUOTE_VERSION}`;
  const faults: Fault[] = [];
  if (version !== QUOTE_VERSION)
    faults.push({
      line: 1,
      column: 1,
      says: `a quote file starts with "${first}". "lampkeeper compare HOME --blank" prints one to fill in.`,
    });
  const read = quoteSchema.safeParse(rest);
  for (const issue of read.error?.issues ?? [])
    faults.push({ ...file.placeOf(keysOf(issue)), says: sayIssue(issue) });
  if (faults.length > 0) return { ok: false, says: sayFaults(path, faults), faults };
  return { ok: true, quote: read.data! };
}

const asLines = (data: unknown): Record<string, unknown> =>
  typeof data === 'object' && data !== null && !Array.isArray(data)
    ? (data as Record<string, unknown>)
    : {};

const keysOf = ({ path }: z.core.$ZodIssue) =>
  path.map((key) => (typeof key === 'number' ? key : String(key)));

function sayIssue(issue: z.core.$ZodIssue): string {
  const at = issue.path.join(', ');
  switch (issue.code) {
    case 'unrecognized_keys':
      return `${issue.keys.map((key) => `"${key}"`).join(', ')} does not belong here. The lines are: ${Object.keys(quoteSchema.shape).join(', ')}.`;
    case 'invalid_value':
      return `${at}: write one of ${issue.values.join(', ')}, or leave the line out.`;
    case 'too_big':
      return `${at}: must be at most ${issue.maximum}.`;
    case 'too_small':
      return `${at}: must be at least ${issue.minimum}.`;
    case 'invalid_type':
      return `${at}: must be ${kinds[issue.expected] ?? issue.expected}, or leave the line out.`;
    default:
      return `${at}: ${issue.message}.`;
  }
}

const kinds: Readonly<Record<string, string>> = {
  number: 'a number without a unit, such as 4200',
  boolean: 'true or false',
  array: 'a list, such as [lights, internet], or []',
  string: 'words',
};
