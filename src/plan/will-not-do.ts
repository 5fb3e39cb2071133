import type { Home } from '../home/home';
import { wiredKinds } from '../home/route-kind';
import type { Advice } from '../routes/advise';

/** What the advised route will not do, said plainly. */
export function willNotDo(home: Home, advice: Advice): string[] {
  const { route } = advice;
  const lines = [...new Map(route.leavesOut.map((load) => [load.name, load])).values()].map(
    (load) => `${load.name}: ${load.why}.${load.must ? ' You said it must keep running.' : ''}`,
  );
  if (!route.lasting.reachesGoal) lines.push(route.lasting.says);
  if (home.lifeSupport !== 'no') {
    lines.push('It is no second source for life support: that must not hang on this house at all.');
  }
  if (home.facts.is('goal-gap', 'no-blink', 'minute') && !bridges(route.gap)) {
    lines.push(`It leaves a dark gap: ${route.gap}. Put a small battery at what must not blink.`);
  }
  if (!wiredKinds.includes(route.kind))
    lines.push('It feeds nothing that is wired in: no outlet, light or pump of the house itself.');
  if (advice.wholeJob !== null) {
    lines.push(
      `To do the whole job, the cheapest here would be: ${advice.wholeJob.title.toLowerCase()}.`,
    );
  }
  return lines;
}

function bridges(gap: string): boolean {
  return (
    gap.startsWith('from no blink') || gap.startsWith('none') || gap.startsWith('10 to 30 seconds')
  );
}
