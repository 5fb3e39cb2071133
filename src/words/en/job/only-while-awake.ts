import type { AwakeHours } from '../../../home/loads/awake';

/** Our own caution: never a plug-in heater while everybody sleeps. */
export const onlyWhileAwake = ({ from, until }: AwakeHours): string =>
  `a plug-in heater runs only while somebody is awake, counted from ${clock(from)} to ${clock(until)}, and never while everybody sleeps`;

const clock = (hour: number) =>
  `${((hour + 11) % 12) + 1} ${hour < 12 ? 'in the morning' : 'in the evening'}`;
