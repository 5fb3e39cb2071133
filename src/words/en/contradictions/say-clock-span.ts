import type { ClockSpan } from '../../../plan/contradictions/contradiction';

/** "from 4 pm to midnight". */
export const sayClockSpan = ([from, to]: ClockSpan): string =>
  `from ${clockHour(from)} to ${clockHour(to)}`;

const clockHour = (hour: number) =>
  hour % 24 === 0
    ? 'midnight'
    : hour === 12
      ? 'noon'
      : hour < 12
        ? `${hour} am`
        : `${hour - 12} pm`;
