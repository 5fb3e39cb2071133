/** Words above the list of answers, in both faces. */
export const CHECK_TITLE = 'Check your answers, then write the plan';
export const CHECK_HINT =
  'Choose a line to change it. A question mark stands where the answer is open.';
