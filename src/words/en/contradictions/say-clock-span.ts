import type { ClockSpan } from '../../../plan/contradictions/contradiction';
import { clockHour } from '../clock-hour';

/** "from 4 pm to midnight". */
export const sayClockSpan = ([from, to]: ClockSpan): string =>
  `from ${clockHour(from)} to ${clockHour(to)}`;
