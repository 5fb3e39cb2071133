/** An hour of the day from 0 to 24 as people say it: "4 pm", "noon", "midnight". */
export const clockHour = (hour: number): string =>
  hour % 24 === 0
    ? 'midnight'
    : hour === 12
      ? 'noon'
      : hour < 12
        ? `${hour} am`
        : `${hour - 12} pm`;

/** From one hour of the day to another; "7 to 9 pm" where both are of one half of the day. */
export function clockStretch(
  [from, until]: readonly [from: number, until: number],
  between: 'to' | 'until' = 'to',
): string {
  const [start, end] = [clockHour(from), clockHour(until)];
  const half = / [ap]m$/.exec(end)?.[0] ?? '';
  const short = half !== '' && start.endsWith(half) ? start.slice(0, -half.length) : start;
  return `${short} ${between} ${end}`;
}
