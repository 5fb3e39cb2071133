/** Words of the sheet for a person who needs a powered device. */
export const healthWords = {
  title: 'Health sheet',
  purpose:
    'For the person with the device, whoever helps, and the clinician. Keep it with the device. Hand it to nobody else.',
  devices: 'The devices',
  head: ['Device', 'Runs at', 'Energy a day'],
  carries: 'What carries it in an outage',
  covered: (names: string, hours: string) =>
    `${names}: ${hours} by the careful count, with all else off.`,
  notCarried: (names: string) => `The backup planned does not carry: ${names}.`,
  nothing:
    'The backup planned carries none of them. The second way and the leaving point are what there is.',
  first: 'Before anything is bought',
  clinician: 'The clinician fills in',
  clinicianNames: [
    'Longest time without the device, hours',
    'What to do meanwhile',
    'Signs that mean 911',
    'Room temperature, lowest and highest',
    'Medicine to keep cold, and how long it may be warm',
    'Name, phone, date, signature',
  ],
  second: 'The second way',
  leave: 'When to leave',
  place: 'The leaving place fills in',
  placeNames: [
    'Address and phone',
    'It has power for the device: since when, how long',
    'Who takes us there',
  ],
};
