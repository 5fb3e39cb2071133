import { type Document, isScalar, isSeq, type Node, visit } from 'yaml';

/** A tariff as it stands in a home file: short lists on one line, days in quotes. */
export function tariffNode(doc: Document, tariff: object): Node {
  const node = doc.createNode(tariff);
  visit(node, {
    Seq: (_, seq) => {
      const flat = (items: readonly unknown[]): boolean =>
        items.every((item) => isScalar(item) || (isSeq(item) && flat(item.items)));
      if (flat(seq.items)) seq.flow = true;
    },
    // A reader of YAML 1.1 takes 06-01 for a day of no year or a sum; quotes leave no doubt.
    Scalar: (key, scalar) => {
      if (key !== 'key' && /^\d\d-\d\d$/.test(String(scalar.value))) scalar.type = 'QUOTE_DOUBLE';
    },
  });
  return node;
}
