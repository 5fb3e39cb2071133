import { type Cite, reference } from '../quantity/cite';

/** A published table as it stands in `src/tables/data`: its rows and where they come from. */
export interface Table<Row = Record<string, unknown>> {
  readonly name: string;
  readonly about: string;
  /** Unit of each column that has one, by column name. */
  readonly unit: Readonly<Record<string, string>>;
  readonly source: TableSource;
  /** Day someone last compared the rows with the source. */
  readonly checked: string;
  /** Day after which the rows should be compared again. */
  readonly recheckAfter: string;
  readonly notes?: string;
  readonly rows: readonly Row[];
}

export interface TableSource {
  readonly title: string;
  readonly publisher: string;
  readonly edition?: string;
  readonly section?: string;
  readonly url?: string;
  /** `published`, `practice` (common practice, no source), `memory` (not re-read) or `judgement`. */
  readonly standing: 'published' | 'practice' | 'memory' | 'judgement';
  /** Year that prices or counts belong to, where they have one. */
  readonly year?: number;
}

/** A table as it is cited: what it was copied from, or its title and how we know it. */
export function citeTable(table: Pick<Table<unknown>, 'source'>): Cite {
  const { title, publisher, edition, section, standing } = table.source;
  const whole = [publisher, title, edition, section].filter(Boolean).join(', ');
  if (standing === 'published') return reference(whole);
  return [{ table: standing === 'memory' ? whole : title, standing }];
}
