/** Lines that stand on more than one sheet. */
export const dangerTold = (told: string) =>
  `Danger now. You told us: ${told}. Do this before you read on:`;
export const draftLine = (why: string) => `DRAFT, not for buying from: ${why}.`;
export const draftForStranger = 'DRAFT: answers are open, for talking it over only.';
export const notADesign =
  'A planning aid, not an electrical design. A licensed electrician, the inspector and the local code decide.';
export const asOf = (date: string) => `As of ${date}.`;
