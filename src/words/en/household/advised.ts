import type { AddOn } from '../../../plan/steps/add-ons';
import type { Figure } from '../../../quantity/figure';
import type { MustCarried } from '../../../routes/must-carried';
import type { TransferTime } from '../../../routes/transfer-time';
import type { GeneratorFuel } from '../../../tables/fuels';
import { inSentence, listOf } from '../list-of';
import { sayFigure } from '../say-figure';
import { sayFuel } from '../say-fuel';
import { sayTransferTime } from '../say-transfer-time';
import { addOnBecause, addOnCost, addOnName } from '../steps/say-add-on';

/** The route advised. */
export const advised = {
  title: (route: string, asBridge: boolean) =>
    `${asBridge ? 'Beside that, only as a bridge' : 'The one advised'}: ${route.toLowerCase()}`,
  part: (name: string, costUsd: Figure) => `${name}: ${sayFigure(costUsd)}`,
  /** `above`: by how much that is above what was told, with a comma before it. */
  costs: (costUsd: Figure, above: string) => `It costs ${sayFigure(costUsd)}${above}.`,
  burns: (perDay: Figure, fuel: GeneratorFuel) =>
    `It burns ${sayFigure(perDay)} of ${sayFuel(fuel)}.`,
  whenTheGridFails: (gap: TransferTime) => `When the grid fails: ${sayTransferTime(gap)}.`,
  madeOf: 'What it is made of:',
  worksIf: 'It works if:',
  goodToKnow: 'Good to know:',
  besideIt: 'Worth having beside it, and in none of its sums:',
  addOn: (one: AddOn) => `${addOnName(one)}: ${addOnCost(one)}; ${addOnBecause(one)}.`,
  /** What must keep running, what of it needs no power here, and what is good to have, apart, so that the counts can be followed. */
  carries(given: {
    readonly count: MustCarried;
    readonly must: readonly string[];
    /** Needs no power in the way of living it counts on. */
    readonly needless: readonly string[];
    readonly more: readonly string[];
  }): string {
    const { carried, of: all } = given.count;
    const count = carried === all ? `all ${all}` : `${carried} of the ${all}`;
    const also =
      given.more.length > 0 ? ` Good to have, it also carries: ${given.more.join(', ')}.` : '';
    const needless =
      given.needless.length > 0
        ? ` Living thriftily does without power for ${listOf(given.needless.map(inSentence))}.`
        : '';
    return `It carries ${count} that must keep running: ${given.must.join(', ')}.${needless}${also}`;
  },
};
