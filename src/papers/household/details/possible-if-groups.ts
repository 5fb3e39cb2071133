import type { PossibleIf } from '../../../advice/possible-if';

/**
 * Those that share something that can kill, in one paragraph, so that it is said once and in the same paragraph as each of its routes. In
 * the order of the plan.
 */
export function sharingCautions(all: readonly PossibleIf[]): PossibleIf[][] {
  return all.reduce<PossibleIf[][]>((groups, one) => {
    const sharing = groups.filter((group) => group.some((other) => shares(other, one)));
    const others = groups.filter((group) => !sharing.includes(group));
    const joined = [...sharing.flat(), one];
    return [...others, joined].sort((a, b) => all.indexOf(a[0]!) - all.indexOf(b[0]!));
  }, []);
}

const shares = (a: PossibleIf, b: PossibleIf) =>
  a.cautions.some(({ id }) => b.cautions.some((other) => other.id === id));
