/** Words of the forms of letter for those who must know or agree. Each stands on a sheet of its own. */
export const fileWords = {
  from: ['From', 'Address', 'Date'],
  answer: 'Your answer',
  answerNames: ['Agreed, with these conditions', 'Name, date, signature'],
  planned: (route: string) => `What is planned: ${route}.`,
  parts: 'What it is made of',
  by: 'Licensed work, permit and inspection come first. Nothing is connected before.',
  draft: 'The plan is still a draft; the equipment may change.',
  where: 'Where it stands',
  inspector: {
    title: 'To the building department',
    purpose: 'For the permit. One sheet, to hand in with the application or to ask with.',
    asks: [
      'Which permits and inspections does this need, and in what order?',
      'Which code edition and which local changes are in force?',
      'Where may the equipment and its fuel stand, and how far from openings and lot lines?',
      'What does the fire department want to see: signs, shut-offs, a drawing?',
      'Is there a flood height for this address?',
    ],
    load: 'Load and service, planning figures',
    circuits: (watts: string, va: string) => `Runs at once ${watts}; hardest start ${va}.`,
  },
  insurer: {
    title: 'To the insurer',
    purpose: 'So that the answer is in writing before anything is bought.',
    asks: [
      'Does the policy cover this equipment, and damage by it or to it?',
      'What proof do you want: listing marks, permit, inspection, photographs?',
      'How much fuel may be kept here, and where?',
      'Does the premium change? Is anything excluded?',
    ],
  },
  landlord: {
    title: 'To the landlord or the association',
    purpose: 'For consent in writing.',
    asks: [
      'Do you agree to what is planned, in the place named?',
      'Which hours, noise limits and places hold for it?',
      'Who may do the work, and who keeps the permit?',
      'What must be taken out again at the end, and by whom?',
    ],
  },
  utility: {
    title: 'To the power company',
    purpose: 'For its approval, and to be on its lists.',
    asks: [
      'Does this need an application, and how long does it take?',
      'Which transfer equipment do you allow, at the meter or behind it?',
      'May it run beside the grid, and may it send power out? On which rate?',
      'When were the longest outages on this line, and whom do I call?',
    ],
    isolated:
      'In an outage the home is cut off from your line by listed transfer equipment, so that nothing flows back into it.',
    plugged:
      'Nothing is wired in: things are plugged straight into the source, so that nothing can flow back into your line.',
  },
};
