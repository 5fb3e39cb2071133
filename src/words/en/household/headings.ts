/** Headings of the parts of the details whose lines come from the plan. */
export const headings = {
  details: 'The details',
  draft: 'Why this is a draft',
  beforeBuying: 'Before anything is bought',
  job: 'The job',
  willNotDo: 'What it will not do',
  nothingLeftOut: 'Nothing that must keep running is left out.',
  leaving: 'When to leave',
  electrician: 'Where a licensed electrician is required',
  electricalFigures: 'For the electrician, in figures (all of it in the plan file)',
  nextSteps: 'Next steps',
  /** What the household copied, with a space before it. */
  youCopied: (quoted: string) => ` You copied: ${quoted}`,
};
