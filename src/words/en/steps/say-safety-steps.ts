const agree =
  'gree with the clinician and the equipment supplier: how long each device may be without power, a second way that needs no power from this house, and when to leave.';

/** `careful`: nobody said whether somebody depends on a device. */
export const sayDeviceTerms = (careful: boolean) =>
  careful ? `If somebody here depends on a powered device: a${agree}` : `A${agree}`;

export const sayDeviceLists = (careful: boolean) =>
  `${careful ? 'Then put' : 'Put'} the household on the power company's and the supplier's lists. A list gives warning; it does not keep the power on.`;

export function sayAlarms(have: 'all' | 'some' | 'none'): string {
  if (have === 'all')
    return 'Test the carbon monoxide alarms you have: press each button, and read the date on the back, for most last 5 to 10 years.';
  const missing =
    have === 'some' ? 'the carbon monoxide alarms that are missing' : 'carbon monoxide alarms';
  return `Buy and place ${missing}, with batteries, so that one hangs on each floor and by the bedrooms; then press the button of each.`;
}

/** The trial run, and what it needs where a life-support device may be here. */
export const sayRehearsal = (lifeSupport: boolean) =>
  `Rehearse it once on a mild day, in daylight, with two adults, before the season starts.${lifeSupport ? " With a life-support device: only with the clinician's agreement and the tested second source already running." : ''}`;
