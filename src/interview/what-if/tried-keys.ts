/** Short words for what is tried most, and the question each stands for. */
export const TRIED_AS: Readonly<Record<string, string>> = {
  goal: 'goal-hours',
  season: 'goal-season',
  budget: 'budget-now',
  'generator-place': 'engine-place',
};

/** Words that stand for more than one answer, or for none. */
export const TRIED_BESIDE = ['more', 'less', 'size', 'refill'] as const;
export type Beside = (typeof TRIED_BESIDE)[number];

/** What can be typed before the "=", besides the ids of questions. */
export const TRIED_KEYS: readonly string[] = [...Object.keys(TRIED_AS), ...TRIED_BESIDE];
