/** One thing of two plans in sentences, to be laid side by side. */
export interface SaidRow {
  readonly name: string;
  readonly before: string;
  readonly after: string;
  readonly changed: boolean;
}

/** What differs between two plans, in the sentences of a language. */
export interface SaidChanges {
  readonly rows: readonly SaidRow[];
  /** Cautions that come, what can kill first and whole, and those that go. */
  readonly come: readonly string[];
  readonly go: readonly string[];
  /** Where nothing of it differs: that; else null. */
  readonly nothing: string | null;
  /** What the figures rest on. */
  readonly basis: string;
}
