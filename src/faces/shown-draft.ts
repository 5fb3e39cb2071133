import type { Draft } from '../plan/draft/draft';
import type { Glance, GlanceRoute } from '../plan/draft/glance';

/** The draft as a face is handed it. */
export interface ShownDraft extends Omit<Draft, 'glance'> {
  readonly glance: ShownGlance;
  /** Sentences to show below: what would have to be true for more, and answers that do not fit together. */
  readonly lines: readonly string[];
}

export interface ShownGlance extends Omit<Glance, 'route'> {
  readonly route: ShownRoute | null;
}

/** The route with its title and what has to be true before it works, in words. */
export interface ShownRoute extends Omit<GlanceRoute, 'called' | 'ifs'> {
  readonly title: string;
  readonly ifs: readonly string[];
}
