/** Words of the sheet an electrician quotes from, and of those for the file. */
export const quoteWords = {
  title: 'Please quote this',
  purpose:
    'For a licensed electrician. Not a design: your own calculation, the code and the inspector decide.',
  household: ['Address', 'Phone', 'Wanted by'],
  circuits: 'What it must carry',
  circuitHead: ['Circuit', 'V', 'Runs, W', 'Starts, VA', 'Known'],
  circuitsWithOptional: 'What it must carry (+ good to have, left out first)',
  /** A circuit that is good to have and no more; what the mark means stands in the heading. */
  optional: (name: string) => `${name} +`,
  service: 'The service as found',
  requirements: 'What it must meet',
  points: 'Please state in the quote',
  siteQuestions: 'To look at on site',
  price: 'Your price',
  homeAsItIs: 'To look at, and to put right',
  priceOfWork: ['Work', 'Permit, inspection', 'Total, $', 'Signed, license, insured'],
  /** The ten lines of a quote that `compare` lays beside the plan, and what makes them up. */
  priceLines: [
    'Equipment, listing',
    'Work',
    'Permit, inspection',
    'Total, $',
    'Usable kWh',
    'Running W',
    'Starting VA',
    'Transfer gear',
    'Left out',
    'Warranty',
    'Weeks',
    'Signed, license, insured',
  ],
  noWiring: 'This plan has no wiring work in it. What is asked here is about the home as it is.',
};
