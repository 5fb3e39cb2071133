import type { FileProblem, TariffFault } from '../../../bill/tariff/tariff-fault';
import { isShapeProblem, sayShape } from './say-shape';
import { sayTariffProblem } from './say-tariff-problem';

/** What is wrong in a tariff, and what to do. */
export function sayTariffFault({ path, problem }: TariffFault): string {
  if (isShapeProblem(problem)) return sayShape(problem, path);
  return isFileProblem(problem) ? sayFile(problem) : sayTariffProblem(problem);
}

const fileProblems: readonly string[] = ['no-tariff-file', 'first-line-missing', 'other-form'];

const isFileProblem = (problem: TariffFault['problem']): problem is FileProblem =>
  fileProblems.includes(problem.code);

function sayFile(problem: FileProblem): string {
  switch (problem.code) {
    case 'no-tariff-file':
      return `a tariff file starts with "${problem.firstLine}". Add that line at the top.`;
    case 'first-line-missing':
      return `"${problem.firstLine}" is missing. Add it as the first line.`;
    case 'other-form':
      return `this file is of form ${problem.found}; this program reads form ${problem.reads}.`;
  }
}
