import type { Draft, DraftLoad } from '../plan/draft/draft';
import type { Glance, GlanceRoute } from '../plan/draft/glance';

/** The draft as a face is handed it. */
export interface ShownDraft extends Omit<Draft, 'glance' | 'loads'> {
  readonly loads: readonly ShownLoad[];
  readonly glance: ShownGlance;
  /** Sentences to show below: what would have to be true for more, and answers that do not fit together. */
  readonly lines: readonly string[];
}

/** A load by its name. */
export interface ShownLoad extends Omit<DraftLoad, 'called'> {
  readonly name: string;
}

export interface ShownGlance extends Omit<Glance, 'route'> {
  readonly route: ShownRoute | null;
}

/** The route with its title and what has to be true before it works, in words. */
export interface ShownRoute extends Omit<GlanceRoute, 'called' | 'ifs' | 'leavesOut'> {
  readonly title: string;
  readonly ifs: readonly string[];
  /** Names of what must run and is not carried. */
  readonly leavesOut: readonly string[];
}
