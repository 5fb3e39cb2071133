/** Words of the sheet an electrician quotes from, and of those for the file. */
export const quoteWords = {
  title: 'Please quote this',
  purpose:
    'For a licensed electrician. Not a design: your own calculation, the code in force and the inspector decide.',
  household: ['Address', 'Phone, best time', 'Wanted by'],
  circuits: 'What it must carry',
  circuitHead: ['Circuit', 'V', 'Runs, W', 'Starts, VA', 'Known'],
  /** A circuit that is good to have and no more; what the mark means stands below. */
  optional: (name: string) => `${name} +`,
  optionalMeans: '+ good to have, and the first to be left out.',
  service: 'The service as found',
  requirements: 'What it must meet',
  points: 'Please state in the quote',
  siteQuestions: 'To look at on site',
  price: 'Your price',
  homeAsItIs: 'To look at, and to put right',
  priceOfWork: ['Work', 'Permit and inspection', 'Total, $', 'License, insurance, signature'],
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
    'License, insurance, signature',
  ],
  noWiring: 'This plan has no wiring work in it. What is asked here is about the home as it is.',
};
