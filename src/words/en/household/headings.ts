/** Headings of the parts of the details whose lines come from the plan. */
export const headings = {
  details: 'The details',
  draft: 'Why this is a draft',
  beforeBuying: 'Before anything is bought',
  job: 'The job',
  willNotDo: 'What it will not do',
  /** How long it lasts stands with the route advised. */
  notSoLong: 'Last as long as you asked for: how long it lasts is said above.',
  nothingLeftOut: 'Nothing that must keep running is left out.',
  leaving: 'When to leave',
  electrician: 'Where a licensed electrician is required',
  electricalFigures: 'For the electrician, in figures (all of it in the plan file)',
  /** After the points that stand nowhere else. */
  cautionsAbove: 'And what each caution above asks of a licensed electrician.',
  nextSteps: 'Next steps',
  settleAbove: 'Settle first what does not fit together, as the details say at their beginning.',
  findOutAbove: 'Find out what stands under "Worth finding out", the first of it first.',
  /** What the household copied, with a space before it. */
  youCopied: (quoted: string) => ` You copied: ${quoted}`,
};
