/** Columns and rows of windows, from the smallest in which a question is shown. */
export const windowSizes = [
  [30, 10],
  [40, 24],
  [80, 24],
  [120, 40],
  [200, 60],
] as const;
