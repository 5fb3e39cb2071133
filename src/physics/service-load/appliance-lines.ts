import { type ApplianceVa, type ServiceLoadRules, sumVa } from './dwelling';
import { countedLine, type LoadLine } from './load-lines';

/** Least rating that NEC 220.53 brings down, VA; it also takes a quarter horsepower, which a label in VA does not tell. */
const LEAST_VA = 500;

/**
 * Appliances of the standard method, VA: four or more that are fastened in place and of 500 VA or more at 75 % (220.53);
 * with fewer, and whatever is smaller, plugged in or space heating, whole.
 */
export function applianceLines(
  appliances: readonly ApplianceVa[],
  rules: Pick<ServiceLoadRules, 'manyAppliancesFrom' | 'manyAppliancesShare'>,
): LoadLine[] {
  const fastened = appliances.filter((a) => a.fastened !== false && a.va >= LEAST_VA);
  const others = appliances.filter((a) => !fastened.includes(a));
  const many = fastened.length >= rules.manyAppliancesFrom;
  const share = many ? rules.manyAppliancesShare : 1;
  return [...line('fixed-appliances', fastened, share), ...line('other-appliances', others, 1)];
}

function line(
  code: 'fixed-appliances' | 'other-appliances',
  of: readonly ApplianceVa[],
  share: number,
): LoadLine[] {
  if (of.length === 0) return [];
  const names = of.map((a) => a.name);
  return [countedLine({ code, share, names }, sumVa(of) * share, '220.53')];
}
