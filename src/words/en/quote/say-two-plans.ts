/** The plans of two homes, one laid beside the other; what stands in them is said in `changes`. */
export const twoPlans = {
  title: (one: string, other: string) => `Two plans: ${one} and ${other}`,
  same: (line: string) => `Both: ${line}`,
  each: (home: string, line: string) => `${home}: ${line}`,
  theJob: 'The job',
  howSure: 'How sure',
  state: (draft: boolean) => (draft ? 'A draft: some answers are open.' : 'Enough is told for it.'),
};
