import type { Advice } from '../advice/advice';

/** What the way of living of the route advised takes to get ready for, beside the route itself, likely $; 0 as usual. */
export function thriftCostUsd({
  list,
  advised,
  route,
}: Pick<Advice, 'list' | 'advised' | 'route'>): number {
  const line = advised === null ? undefined : list[advised];
  return line?.way === 'thrifty' ? Math.max(0, line.usd - route.costUsd.value) : 0;
}
