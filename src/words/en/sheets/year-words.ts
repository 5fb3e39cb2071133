/** Words of the sheet of the year. */
export const yearWords = {
  title: 'The year',
  purpose: 'What keeps the backup working. Tick each with a date.',
  what: 'What to do',
  everyMonth: 'every month',
  task: (name: string, when: string, does: string) => `${name} (${when}): ${does}`,
  again: 'Make the plan anew when',
  triggers: [
    'somebody is born, moves in, grows frail or gets a device',
    'a heater, a pump, a car, a roof or a panel is new',
    'an outage went otherwise than planned: write down what ran and how long',
    'prices here are more than a year old',
  ],
};
