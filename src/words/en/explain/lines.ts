import type { Source } from '../../../quantity/figure';
import { sayCounted } from './say-counted';

/** A figure that is worked out in the lines below it. */
export const head = (value: string, name: string) => (name === '' ? value : `${value}: ${name}`);

/** A figure whose lines stand further up. */
export const asAbove = (line: string) => `${line} (as above)`;

interface Told extends Source {
  /** What the question was about; null where it is no answer. */
  readonly asked: string | null;
}

/** Where a figure came from that is not worked out any further. */
export function from(value: string, name: string, source: Told): string {
  return head(value, [name, origin(source)].filter(Boolean).join('; '));
}

function origin({ kind, label, cite, asked, counted }: Told): string {
  const about = asked === null ? '' : `: "${asked}"`;
  if (kind === 'told' && asked !== null) return `you told us${about}`;
  if (kind === 'nameplate' && asked !== null) return `you read it on the label${about}`;
  if (kind === 'assumed' && asked !== null) return `we assume it, for it is not known${about}`;
  const says =
    counted !== undefined
      ? sayCounted(counted)
      : kind === 'practice' && label === ''
        ? 'common practice, no source'
        : label;
  return [says, cite === undefined ? '' : `[${cite}]`].filter(Boolean).join(' ');
}
