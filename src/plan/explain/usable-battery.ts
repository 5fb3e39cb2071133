import { isPack } from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import { coldCapacity } from '../../physics/cold-battery';
import { type Figure, figure } from '../../quantity/figure';
import { operand, timesFigure, worked } from '../../quantity/figure-arithmetic';
import { cellC, PLANNED_AGE_YEARS, usableOf } from '../../routes/battery-hours';
import { batteryType, batteryTypes, coldPoints } from '../../tables/battery-types';
import { citeTable } from '../../tables/table';
import type { Plan } from '../plan';

const lfp = batteryType('lithium-iron-phosphate');
const TABLE = { kind: 'table', cite: citeTable(batteryTypes) } as const;
const KWH = { unit: 'kWh' } as const;

/** What the battery of the route advised gives from full to empty; null without one. */
export function usableBattery({ home, advice: { route } }: Plan): Figure | null {
  const { usableKwh, nameplateKwh, kind } = route;
  if (usableKwh === null) return null;
  const source = { kind: 'formula' } as const;
  const plain = { value: usableKwh, ...KWH, source };
  if (nameplateKwh === null) return figure(plain);
  const nameplate = operand(nameplateKwh, 'kWh', 'nameplate');
  const depth = operand(lfp.usableDepth, 'count', 'usable-depth', TABLE);
  // A pack that is there beside one that is bought has a count of its own.
  if (isPack(traitsOf[kind]) && usableKwh === nameplateKwh * lfp.usableDepth) {
    return figure({ ...plain, as: () => timesFigure(nameplate, depth, KWH) });
  }
  if (usableKwh !== usableOf(home, nameplateKwh)) return figure(plain);
  return figure({
    ...plain,
    as: () => {
      const fade = operand(lfp.fadePerYear, 'count', 'fade-a-year', TABLE);
      const lost = timesFigure(fade, operand(PLANNED_AGE_YEARS, 'count', 'planned-age'), {
        is: 'faded',
      });
      const left = worked(
        { by: 'difference', of: [operand(1, 'count', 'new-capacity'), lost] },
        { unit: 'count', is: 'share-left' },
      );
      const cold = operand(
        coldCapacity(cellC(home), coldPoints(lfp)),
        'count',
        'cold-share',
        TABLE,
      );
      return worked({ by: 'ratio', of: [nameplate, depth, left, cold], under: [] }, KWH);
    },
  });
}
