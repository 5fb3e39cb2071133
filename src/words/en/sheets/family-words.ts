/** Words of the sheet for the family. */
export const familyWords = {
  title: 'What we decided, and why',
  purpose: 'For everybody who lives here.',
  job: 'The job',
  buy: 'What to buy',
  bridge: 'Beside that, as a bridge only',
  buyNothing: (title: string) => `Nothing. Use ${title}.`,
  price: (title: string, likely: string, range: string) => `${title}: about ${likely} (${range}).`,
  long: 'How long it lasts',
  likely: (hours: string, careful: string) =>
    `About ${hours} at likely use; careful count ${careful}.`,
  stored: (gallons: string, hours: string, careful: string) =>
    `With ${gallons} stored: about ${hours}; careful count ${careful}.`,
  asked: (goal: string) => `You asked for ${goal}.`,
  gas: 'As long as the gas flows.',
  noPower: 'It gives no power.',
  runs: 'What runs',
  runsNot: 'What does not run',
  beside: 'Beside it',
  first: 'Before anything is bought',
  other: (title: string, price: string, hours: string) => `${title}: about ${price}, ${hours}.`,
  otherHours: (hours: string) => `lasts about ${hours}`,
  otherGas: 'runs while the gas flows',
  otherNone: 'gives no power',
  why: 'Why',
  steps: 'Steps',
  findOut: 'Worth finding out',
};
