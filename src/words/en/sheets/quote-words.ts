/** Words of the sheet an electrician quotes from, and of those for the file. */
export const quoteWords = {
  title: 'Please quote this',
  purpose:
    'For a licensed electrician. Not a design: your own calculation, the code in force and the inspector decide.',
  household: ['Address', 'Phone, best time', 'Wanted by'],
  circuits: 'What it must carry',
  circuitHead: ['Circuit', 'Volts', 'Runs at', 'Starts at', 'Known from'],
  optional: (name: string) => `${name} (good to have)`,
  service: 'The service as found',
  serviceHead: ['What', 'Found', 'How known'],
  requirements: 'What it must meet',
  points: 'Please state in the quote',
  siteQuestions: 'To look at on site',
  price: 'Your price',
  priceLines: [
    'Equipment, with model and listing',
    'Work',
    'Permit, inspection, utility application',
    'Usable kWh or running watts, and starting VA',
    'What it leaves out of the list above',
    'Weeks until it works',
    'Total',
    'License number, insurance, date, signature',
  ],
  noWiring: 'This plan has no wiring work in it. What is asked below is about the home as it is.',
};
