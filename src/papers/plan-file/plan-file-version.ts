/** First key of a plan file, with the version of its form. */
export const PLAN_KEY = 'lampkeeperPlan';
/** Version of the plan file. Grows when a reader of an older file would misread a newer one, or refuse it. */
export const PLAN_FILE_VERSION = 5;
