/** What keeping charge for outages costs. */
export const reserve = {
  about: (route: string, gainsNothing: boolean) =>
    `What keeping charge for outages costs (${route.toLowerCase()}): a battery can work for the bill or wait for an outage. What is kept for outages is never used for the bill.${gainsNothing ? ' Here it gives up nothing, because the battery has nothing to earn: keep all of it.' : ''}`,
  columns: [
    'Kept for outages',
    'That is',
    'Outages of your length carried, if one finds it at this level',
    'Off the bill a year, after wear',
    'Given up a year',
  ],
  share: (share: number, chosen: boolean) =>
    `${Math.round(100 * share)} %${chosen ? ' (kept in this plan)' : ''}`,
  inHundred(odds: number): string {
    if (odds > 0.995) return 'more than 99 in 100';
    if (odds < 0.005) return 'fewer than 1 in 100';
    return `${Math.round(100 * odds)} in 100`;
  },
};
