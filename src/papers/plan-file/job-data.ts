import type { Plan } from '../../plan/plan';
import type { Words } from '../../words/words';
import { namedLoads } from './named-load';
import type { PlanData } from './plan-schema';

export function jobData({ job, home }: Plan, words: Words): PlanData['job'] {
  const { must } = job;
  const oneRoom = must?.oneRoom ?? null;
  return {
    loads: namedLoads(words, home, must?.loads ?? []),
    tooMuch: namedLoads(words, home, must?.tooMuch ?? []),
    oneRoom:
      oneRoom === null
        ? 'the whole home'
        : {
            told: oneRoom.told,
            off: namedLoads(words, home, oneRoom.off),
            heaterOnlyAwake: oneRoom.heaterOnlyAwake !== null,
          },
    hardSeason: must?.hardSeason ?? 'none',
    says: words.job(job, home),
  };
}
