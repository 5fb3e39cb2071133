import type { AwakeHours } from '../../../home/loads/awake';
import { onlyWhileAwake } from '../job/only-while-awake';

export const sayNoHeatAtNight = (awake: AwakeHours): string =>
  `Expect no heat at night: ${onlyWhileAwake(awake)}. Sleep together in that room, warmly covered, hang a thermometer in it, and leave before it stays below 60 °F.`;
