import interview from '#compiled/questions.js';
import type { HomeChoice, HomeHere } from '../../faces/home-choice';
import { besideTariff } from '../../interview/beside-tariff';
import { stillOpen } from '../../interview/questions/relevant';
import { streetWords } from '../../interview/street-answers';
import { homesIn } from '../../store/homes-here';
import type { Arguments } from '../read-arguments';
import { whyLines } from './choose-face';

/** Which home of this folder to go on with, asked of whoever named none. */
export async function chooseHere(args: Arguments): Promise<HomeChoice> {
  const { stdin, stdout, env } = process;
  const homes = homesHere('.');
  if (whyLines({ env, stdin, stdout, plain: args.plain }) !== null) {
    const { chooseHomeByLine } = await import('../../faces/lines/choose-home');
    return chooseHomeByLine({ homes, stdin, stdout });
  }
  const { chooseHome } = await import('../../faces/screen/choose-home');
  const hide = args.sharedScreen ? (await import('./shared-screen')).hideFor(args) : undefined;
  return chooseHome({ homes, stdin, stdout, ...(hide === undefined ? {} : { hide }) });
}

/** The homes of a folder, and how far each has come. */
export function homesHere(folder: string): HomeHere[] {
  return homesIn(folder, interview).map(
    ({ name, file, answers, hasTariff, hasPlan, changedAt }) => {
      const context = { interview: besideTariff(interview, hasTariff), short: false };
      // Danger is asked at every sitting.
      const open = stillOpen(context, answers ?? {}).filter(
        ({ id }) => id !== interview.dangers.question,
      );
      return {
        name,
        file,
        answered: answers === null ? null : Object.keys(answers).length,
        toFirstPlan: open.filter(({ id }) => interview.opening.includes(id)).length,
        isWhole: open.length === 0,
        hasPlan,
        street: streetWords(interview, answers ?? {}, hasTariff),
        changedAt,
      };
    },
  );
}
