/** Version of the plan file. Grows when a reader of an older file would misread a newer one, or refuse it. */
export const PLAN_FILE_VERSION = 4;
