import { listOf } from '../list-of';

/** Words of the sheet on the refrigerator door. */
export const fridgeWords = {
  title: 'When the power fails',
  purpose: 'Hang this on the refrigerator.',
  kills: 'What kills here',
  call: 'Fill in: whom to call, where things are',
  whereNames: {
    main: 'Main breaker',
    gas: 'Gas valve, wrench',
    water: 'Water valve',
    source: {
      generator: 'Generator at',
      battery: 'Battery at',
      pack: 'Power pack at',
      vehicle: 'Vehicle keys at',
    },
    fuel: 'Fuel at',
    lights: 'Lights at',
    medicine: 'Medicine, device batteries at',
  },
  start: 'Starting it',
  back: 'When the power is back',
  off: 'What goes off, and when',
  /** What goes off at a rung, and what runs in turns or is turned down from there. */
  rung: (off: readonly string[], less: readonly string[]) =>
    off.length + less.length === 0
      ? 'nothing more: you should already be leaving'
      : [
          ...(off.length > 0 ? [listOf(off)] : []),
          ...(less.length > 0 ? [`run less: ${listOf(less)}`] : []),
        ].join('; '),
  /** Between what goes off first and next, where the same thing is read. */
  stillSo: '. Still so? ',
  draft: 'DRAFT: answers are open, this may change.',
  /** Where the distance and the rest stand under what kills already. */
  placeAsAbove: 'Generator to its marked place outdoors, as above, also when it rains.',
  /** In place of the step that switches things on, where no motor is among them. */
  noMotor: 'Things ON one at a time.',
  /** After the step that switches things on. */
  order: (step: string, names: string) => `${step} Their order: ${names}.`,
  careful: (hours: string) => `Careful count: it lasts ${hours}. Plan by that.`,
  carefulFull: (hours: string, gallons: string) =>
    `Careful count: it lasts ${hours} with ${gallons} stored. Plan by that.`,
  thriftily: (means: string) => `Only while you live thriftily: ${means}.`,
  whileGas: 'It runs while the gas flows.',
  none: 'This plan gives no power: light, warmth, water and food are ready, and you know when to leave.',
  devices: (names: string, hours: string) =>
    `${names} alone, with all else off, careful count: ${hours}.`,
  leave: 'When to leave',
  callNames: {
    emergency: 'Address, for 911',
    power: 'Power company',
    gas: 'Gas supplier',
    electrician: 'Electrician',
    clinician: 'Doctor, supplier',
    neighbor: 'Neighbor',
    place: 'Place to go',
  },
};

/** What is read off the device at a rung, short. */
export const readingWords = {
  fromStart: 'At once',
  charge: (percent: number) => `${percent}% on the display`,
  vehicle: (percent: number) => `${percent}% in the vehicle`,
  gallons: (gallons: string) => `${gallons} left`,
  strain: 'Gas weak or generator labors',
  twoWeeks: 'two weeks or more',
};
