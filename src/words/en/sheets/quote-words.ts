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
  /** The ten lines of a quote that `compare` lays beside the plan, and what makes them up. */
  priceLines: [
    'Equipment, model, listing',
    'Work',
    'Permit and inspection',
    'Total, $',
    'Usable kWh',
    'Watts for hours on end',
    'Starting VA',
    'Transfer equipment',
    'It leaves out',
    'Warranty, years',
    'Weeks until it works',
    'License, insurance',
    'Date, signature',
  ],
  noWiring: 'This plan has no wiring work in it. What is asked below is about the home as it is.',
};
