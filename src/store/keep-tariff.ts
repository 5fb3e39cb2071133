import { isMap, isScalar, parseDocument } from 'yaml';
import { TARIFF_BLOCK } from './home-file';
import { readText } from './read-text';
import { saySystemError } from './say-system-error';
import { tariffNode } from './tariff-node';
import { writeFileWhole } from './write-file-whole';

/**
 * Put a tariff into a home file that was read and is sound, in place of the one there, and leave every other line and
 * comment as it stands. A sentence that says what to do when it failed, else null.
 */
export function keepTariff(path: string, tariff: object): string | null {
  try {
    const text = readText(path);
    const kept = withTariff(text, tariff);
    if (kept !== text) writeFileWhole(path, kept);
    return null;
  } catch (error) {
    return saySystemError(error, 'write', path);
  }
}

/** The text of a home file with this tariff in it, before the answers. */
export function withTariff(text: string, tariff: object): string {
  const doc = parseDocument(text);
  const { contents } = doc;
  if (!isMap(contents)) throw new RangeError('a home file holds a map');
  contents.delete(TARIFF_BLOCK);
  const pair = doc.createPair(TARIFF_BLOCK, null);
  pair.value = tariffNode(doc, tariff) as never;
  const answers = contents.items.findIndex(({ key }) => isScalar(key) && key.value === 'answers');
  contents.items.splice(answers < 0 ? contents.items.length : answers, 0, pair as never);
  return doc.toString({ lineWidth: 0, flowCollectionPadding: false });
}
