import type { WalkPlace } from '../../interview/walk';

/** The form to fill in with a pen. */
export const form = {
  title: 'Questions about your home',
  titleOf: (home: string) => `To look at: ${home}`,
  dangerFirst:
    'If anything is dangerous right now (a smell of gas, someone who feels ill, a hot panel, water near power, a wire down), stop here: get out and call 911.',
  safe: 'Take a pen and a flashlight. Open only the small door of the panel, leave every screwed cover on, and touch no wire. If something is hot, buzzes or smells, go away from it and call an electrician.',
  skip: 'Skip what your home does not have. Leave empty what you do not know.',
  backAtTheComputer: (call: string, home: string) =>
    `Back at the computer: ${call} --change ${home}, then "My list to look at".`,
  nothing: 'Nothing is on the list of this home.',
  answer: (room: string) => `Answer: ${room}`,
  numbers: (count: number) => ` (${count} numbers)`,
  how: (how: string) => `How to find out: ${how}`,
  measured: {
    title: 'If you have a meter',
    intro:
      'A plug-in meter shows watts (W) and, after some days, kilowatt-hours (kWh). Fill in the start only from a clamp meter that holds the peak. Leave health devices plugged in as they are. What is wired in is for an electrician to measure. Then enter it under "Measured with a meter".',
    head: ['What', 'Runs at, W', 'Starts at, W', 'A day, kWh'],
  },
  /** Places as headings on paper. */
  places: {
    panel: 'At the electric panel',
    furnace: 'At the heating and cooling',
    well: 'At the pumps and the water',
    kitchen: 'In the rooms',
    outdoors: 'Outdoors and in the garage',
    papers: 'In your papers',
  } satisfies Record<WalkPlace, string>,
};
