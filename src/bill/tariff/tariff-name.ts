/** What a tariff that we make calls itself, its seasons, periods and charges; `words/en/tariff` says it. */
export type TariffCode =
  | { readonly code: PlainTariffCode }
  /** Nothing was told of the prices: the average of the state, by its name. */
  | { readonly code: 'state-average'; readonly state: string };

export type PlainTariffCode =
  | 'from-bill'
  | 'demo-flat'
  | 'demo-two-periods'
  | 'demo-three-periods'
  | 'demo-demand-charge'
  | 'all-year'
  | 'summer'
  | 'winter'
  | 'rest-of-year'
  | 'all-hours'
  | 'other-hours'
  | 'peak'
  | 'on-peak'
  | 'off-peak'
  | 'shoulder'
  | 'evening'
  | 'night'
  | 'highest-use'
  | 'on-peak-use'
  | 'charge-per-kwh'
  | 'charge-per-month'
  | 'tax';

/** A name as somebody wrote it in a tariff of their own, said back as it stands; or a code of ours. */
export type TariffName = string | TariffCode;

/** A code of ours as a name: `named('peak')`. */
export const named = (code: PlainTariffCode): TariffCode => ({ code });
