import type { FigureEnd } from '../../../quantity/at-end';
import type { Source } from '../../../quantity/figure';
import { sayCite } from '../cites/say-cite';
import { sayCounted } from './say-counted';
import { endOf, sayEnd } from './say-end';
import { sayOrigin } from './say-origin';

/** A figure that is worked out in the lines below it. */
export function head(value: string, name: string, end?: FigureEnd): string {
  const says = [name, end === undefined ? '' : endOf[end]].filter(Boolean).join(', ');
  return says === '' ? value : `${value}: ${says}`;
}

/** A figure whose lines stand further up. */
export const asAbove = (line: string) => `${line} (as above)`;

/** Under the last step of a figure that other screens and papers show with fewer digits. */
export const shownElsewhere = (exact: string, shown: string) =>
  `${exact} is shown as ${shown} elsewhere.`;

interface Told extends Source {
  /** What the question was about; null where it is no answer. */
  readonly asked: string | null;
}

/** Where a figure came from that is not worked out any further. */
export function from(value: string, name: string, source: Told, end?: FigureEnd): string {
  const says = end === undefined ? origin(source) : originOfEnd(source, end);
  const start = head(value, name, end);
  if (says === '') return start;
  return start === value ? `${value}: ${says}` : `${start}; ${says}`;
}

function originOfEnd(source: Told, end: FigureEnd): string {
  const { asked, kind, ends } = source;
  if (ends !== undefined) return sayEnd(ends, end);
  if (kind === 'assumed' && asked !== null) {
    const most = end === 'low' ? 'least' : 'most';
    return `the ${most} we allow for, since it is not known: "${asked}"`;
  }
  return origin(source);
}

function origin(source: Told): string {
  const { kind, is, cite, asked, counted } = source;
  const about = asked === null ? '' : `: "${asked}"`;
  if (kind === 'told' && asked !== null) return `you told us${about}`;
  if (kind === 'nameplate' && asked !== null) return `you read it on the label${about}`;
  if (kind === 'assumed' && asked !== null) return `we assume it, for it is not known${about}`;
  const says =
    counted !== undefined
      ? sayCounted(counted)
      : kind === 'practice' && is === undefined
        ? 'common practice, no source'
        : sayOrigin(source);
  return [says, cite === undefined ? '' : `[${sayCite(cite)}]`].filter(Boolean).join(' ');
}
