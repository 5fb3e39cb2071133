import type { CodeEdition } from '../../tables/electrical/service-load-rules';

/** Code editions that differ for this work, to ask the inspector about; `words` says how. */
export const editionNotes: readonly CodeEdition[] = [2017, 2020, 2023, 2026];
