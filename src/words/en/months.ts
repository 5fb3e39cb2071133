/** The months, January first. */
function monthsIn(style: 'long' | 'short'): readonly string[] {
  const format = new Intl.DateTimeFormat('en-US', { month: style, timeZone: 'UTC' });
  return Array.from({ length: 12 }, (_, month) => format.format(Date.UTC(2001, month, 1)));
}

export const months = monthsIn('long');
/** "Jan", for a narrow column. */
export const shortMonths = monthsIn('short');
