/** Words of the household's page around its sheets. */
export const htmlWords = {
  title: (name: string) => `Backup power plan: ${name}`,
  contents: 'On this page',
  pictures: 'Pictures',
  details: 'The details',
};
