import { demandRange } from '../demand-range';

/**
 * Loss of several causes that each take their share of what the others leave, 0 to 1.
 *
 *     loss = 1 - product(1 - share)
 *
 * Source: Dobos 2014, NREL/TP-6A20-62641, eq. 9 (its own list gives 14.08 %, its plain sum 15 %).
 */
export function combinedLoss(shares: readonly number[]): number {
  let kept = 1;
  for (const share of shares) {
    demandRange(share, { name: 'loss share', unit: 'of 1', min: 0, max: 1 });
    kept *= 1 - share;
  }
  return 1 - kept;
}
