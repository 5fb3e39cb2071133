import { type Document, isMap, isScalar, LineCounter, parseDocument, visit } from 'yaml';
import type { Fault } from './home-file';
import { MOST_DEPTH, tooDeep } from './too-deep';

export interface ParsedYaml {
  readonly doc: Document.Parsed;
  readonly counter: LineCounter;
  readonly faults: readonly Fault[];
}

/**
 * A text read as YAML, with every fault of its form. What would take the reader too long or too deep is refused before
 * it sees the text. Null where it could not read the text at all.
 */
export function parseYaml(text: string): ParsedYaml | null {
  const counter = new LineCounter();
  const deep = tooDeep(text);
  if (deep !== null) {
    const above = text.slice(0, deep).split('\n');
    const says = `lists are nested deeper here than the ${MOST_DEPTH} levels that are read. Take these marks out.`;
    const fault: Fault = { line: above.length, column: above.at(-1)!.length + 1, says };
    return { doc: parseDocument(''), counter, faults: [fault] };
  }
  try {
    // Keys that stand twice are looked for below: the reader itself compares each with all before it.
    const doc = parseDocument(text, {
      lineCounter: counter,
      uniqueKeys: false,
      strict: true,
      version: '1.2',
      prettyErrors: false,
      logLevel: 'error',
    });
    const at = (offset: number) => {
      const { line, col } = counter.linePos(offset);
      return { line: Math.max(1, line), column: Math.max(1, col) };
    };
    const faults = doc.errors.map(({ pos, message }) => ({
      ...at(pos[0]),
      says: `${firstLine(message)} Mend this line first.`,
    }));
    const twice = faults.length > 0 ? [] : keysTwice(doc);
    return {
      doc,
      counter,
      faults: [
        ...faults,
        ...twice.map(({ offset, key }) => ({
          ...at(offset),
          says: `"${key}" stands here a second time; keys must be unique. Take one of the two out.`,
        })),
      ],
    };
  } catch {
    return null;
  }
}

function keysTwice(doc: Document.Parsed): { offset: number; key: string }[] {
  const found: { offset: number; key: string }[] = [];
  visit(doc, {
    Map: (_, map) => {
      if (!isMap(map)) return;
      const seen = new Set<string>();
      for (const { key } of map.items) {
        if (!isScalar(key)) continue;
        const text = String(key.value);
        if (seen.has(text)) found.push({ offset: key.range?.[0] ?? 0, key: text });
        seen.add(text);
      }
    },
  });
  return found;
}

/** The message of the YAML reader in one sentence. */
function firstLine(message: string): string {
  return `${message.split('\n')[0]!.replace(/:$/, '')}.`.replace('..', '.');
}
