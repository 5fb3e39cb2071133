import { type Document, isNode, type LineCounter } from 'yaml';

/** Where something stands in a YAML file: the place of the nearest key above it that is there, counted from 1. */
export type PlaceIn = (path: readonly (string | number)[]) => { line: number; column: number };

/** Places in a document read with this counter. */
export function placeIn(doc: Document.Parsed, counter: LineCounter): PlaceIn {
  return (path) => {
    for (let length = path.length; length >= 0; length--) {
      const node = length === 0 ? doc.contents : doc.getIn(path.slice(0, length), true);
      const offset = isNode(node) ? node.range?.[0] : undefined;
      if (offset === undefined) continue;
      const { line, col } = counter.linePos(offset);
      return { line: Math.max(1, line), column: Math.max(1, col) };
    }
    return { line: 1, column: 1 };
  };
}
