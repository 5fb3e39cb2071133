import type { LoadId } from '../../home/loads/load-id';
import type { TransferTime } from '../../routes/transfer-time';

/** A point about the transfer that takes no figure. */
export type PlainTransferPoint =
  | 'no-curve-for-medical' // the curve of electronics is not applied to a medical device
  | 'one-bond'
  | 'bonded-trips-gfci'
  | 'generator-neutral-not-known'
  | 'flame-needs-bond'
  | 'source-120-for-240'
  | 'one-120-on-both-legs'
  | 'neutral-loaded-at-208';

/** What to know about transfer time, neutral, bond and largest load when the source takes over; `words` says it. */
export type TransferPoint =
  | { readonly code: PlainTransferPoint }
  /** Office electronics ride through so long without voltage, ms. */
  | { readonly code: 'gap'; readonly transferTime: TransferTime; readonly electronicsMs: number }
  | {
      readonly code: 'neutral-current';
      readonly feed: '120/208' | '120/240';
      /** 120 V loads as well shared over both legs as can be, A on the neutral. */
      readonly sharedAmps: number;
      readonly allOnOneAmps: number;
      /** One 120 V source on both legs. */
      readonly inStepAmps: number;
      readonly busierLegAmps: number;
    }
  | {
      readonly code: 'largest-load';
      readonly load: LoadId;
      readonly va: number;
      readonly carried: boolean;
    }
  | {
      readonly code: 'charger-on-generator';
      readonly ratedWatts: number;
      readonly chargerWatts: number;
      readonly powerFactor: number;
    };
