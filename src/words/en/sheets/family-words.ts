/** Words of the sheet for the family. */
export const familyWords = {
  title: 'What we decided, and why',
  purpose: 'For everybody who lives here.',
  why: (because: string) => `Why this one: ${because}`,
  beside: (other: string) => `Beside it: ${other}`,
  other: (title: string, price: string, lasting: string) => `${title}, about ${price}, ${lasting}.`,
  otherHours: (hours: string) => `lasts about ${hours}`,
  otherGas: 'runs while the gas flows',
  otherNone: 'gives no power',
  putRight: 'To put right now',
  steps: 'Steps',
  findOut: 'Worth finding out',
};
