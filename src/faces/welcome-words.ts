/** What somebody reads who has never seen this program, in both faces. */
export const WELCOME_TITLE = 'Lampkeeper: a plan for power cuts';

export const WELCOME: readonly string[] = [
  'We ask about your home. At the end you hold a plan: what to do or buy, about what it costs, how long it lasts, and how to stay safe.',
  'A first plan takes about 5 minutes. Stop whenever you like, and go on later.',
  'Nothing leaves this computer. Your answers stay in a file in this folder.',
  '"Not sure" is a fine answer.',
  'If you smell gas or someone feels ill, go outside now and call 911.',
];
