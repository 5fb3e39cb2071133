import type { YearTaskId } from '../../../plan/on-the-day/year-tasks';

/** Name of each task on the picture of the year, and what to do. */
export const yearTaskWords: Readonly<Record<YearTaskId, { name: string; does: string }>> = {
  'test-alarms': {
    name: 'Test all alarms',
    does: 'Press the button of each smoke and carbon monoxide alarm. New batteries once a year. Read the date on the back: most last 5 to 10 years.',
  },
  'run-generator': {
    name: 'Run the generator',
    does: 'Run it for 20 minutes outdoors, at its marked place, with something heavy plugged in. Look at oil and cord first.',
  },
  'look-at-standby': {
    name: 'Look at the generator',
    does: 'Did it run its own test this month? Any warning light? Snow, leaves and plants off its exhaust.',
  },
  'standby-service': {
    name: 'Yearly service',
    does: 'Have it looked after by a trained person before winter: oil, filter, starter battery. Ask for a test under load.',
  },
  'use-up-fuel': {
    name: 'Use up old fuel',
    does: 'Put the oldest gasoline into a car. Fill the cans anew, and write the date on each. Add stabilizer if it is to stand longer.',
  },
  'charge-battery': {
    name: 'Charge the pack',
    does: 'Read what is left and charge it, also when nothing was drawn. Keep it dry and neither hot nor freezing.',
  },
  'test-transfer': {
    name: 'Go through the switching',
    does: 'Go through the order at the panel with the sheet in hand, in daylight and in mild weather.',
  },
  'device-battery': {
    name: 'Device battery',
    does: 'Ask the supplier to look at the device and time its own battery, with the second way ready. Check cylinders and spare batteries.',
  },
  'sump-test': {
    name: 'Test the sump pump',
    does: 'Pour water into the pit until the pump starts. Press the test button of its alarm, and test the second pump too.',
  },
  'water-food': {
    name: 'Water, food, lights',
    does: 'Fresh water, food that needs no cooking, lights and batteries, and the paper list of numbers.',
  },
  rehearse: {
    name: 'Rehearse the whole plan',
    does: 'Once before the season, on a mild day with two adults: go through the sheet from the first step to the last.',
  },
  'look-again': {
    name: 'Look at this plan again',
    does: 'New people, a new device, a new heater, a new car, a new roof or panel, or a bill that changed? Make the plan anew. Prices are a year old by now.',
  },
};
