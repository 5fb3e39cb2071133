import type { Home } from '../../home/home';
import type { RuleFigure, Trigger } from '../rule';

/** The same trigger with what these loads of the home ask for as they start; those without a motor are left out. */
export function withStarts(
  trigger: Trigger | null,
  home: Home,
  ids: readonly string[],
): Trigger | null {
  if (trigger === null) return null;
  const figures = home.loads.flatMap(({ id, called, startVa }): RuleFigure[] =>
    ids.includes(id) && startVa !== null
      ? [{ load: id, called, at: 'start', figure: startVa }]
      : [],
  );
  return figures.length > 0 ? { ...trigger, figures } : trigger;
}
