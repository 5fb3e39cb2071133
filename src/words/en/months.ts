const format = new Intl.DateTimeFormat('en-US', { month: 'long', timeZone: 'UTC' });

/** The months as they are printed, January first. */
export const months: readonly string[] = Array.from({ length: 12 }, (_, month) =>
  format.format(Date.UTC(2001, month, 1)),
);
