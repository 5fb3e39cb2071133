import type { Finding } from '../../rules/rule';
import { figureData } from './figure-data';
import type { PlanData } from './plan-schema';

export function cautionData(c: Finding): PlanData['cautions'][number] {
  return {
    id: c.id,
    severity: c.severity,
    says: c.says,
    who: [...c.who],
    because: c.because,
    figures: (c.figures ?? []).map((one) => ({
      load: one.load,
      at: one.at,
      figure: figureData(one.figure),
    })),
    careful: c.careful,
    asks: c.asks ?? 'no one question',
    proof: c.proof ?? 'none asked',
    cite: c.cite,
  };
}
