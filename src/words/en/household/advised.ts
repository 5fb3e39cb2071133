import type { AddOn } from '../../../plan/steps/add-ons';
import type { Figure } from '../../../quantity/figure';
import type { Gap } from '../../../routes/gap';
import type { GeneratorFuel } from '../../../tables/fuels';
import { sayFigure } from '../say-figure';
import { sayFuel } from '../say-fuel';
import { sayGap } from '../say-gap';

/** The route advised. */
export const advised = {
  title: (route: string, asBridge: boolean) =>
    `${asBridge ? 'Beside that, only as a bridge' : 'The one advised'}: ${route.toLowerCase()}`,
  part: (name: string, costUsd: Figure) => `${name}: ${sayFigure(costUsd)}`,
  /** `above`: by how much that is above what was told, with a comma before it. */
  costs: (costUsd: Figure, above: string) => `It costs ${sayFigure(costUsd)}${above}.`,
  burns: (perDay: Figure, fuel: GeneratorFuel) =>
    `It burns ${sayFigure(perDay)} of ${sayFuel(fuel)}.`,
  whenTheGridFails: (gap: Gap) => `When the grid fails: ${sayGap(gap)}.`,
  madeOf: 'What it is made of:',
  worksIf: 'It works if:',
  goodToKnow: 'Good to know:',
  besideIt: 'Worth having beside it, and in none of its sums:',
  addOn: ({ name, cost, because }: AddOn) => `${name}: ${cost}; ${because}.`,
  /** What must keep running and what is good to have, apart, so that the counts can be followed. */
  carries(must: readonly string[], of: number, more: readonly string[]): string {
    const count = must.length === of ? `all ${of}` : `${must.length} of the ${of}`;
    const also = more.length > 0 ? ` Good to have, it also carries: ${more.join(', ')}.` : '';
    return `It carries ${count} that must keep running: ${must.join(', ')}.${also}`;
  },
};
