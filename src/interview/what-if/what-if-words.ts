import type { Question } from '../questions/question';

/** The sentences of what if. */
export const whatIfWords = {
  alone: (id: string) => `"${id}" stands alone. Leave it out, or leave the others out.`,
  noChoice: (typed: string, { says }: Question, ids: readonly string[]) =>
    `${typed === '' ? 'Nothing' : `"${typed}"`} is not an answer to "${says}". Type one of: ${ids.join(', ')}, not sure.`,
  notHere: (label: string, { says }: Question, ids: readonly string[]) =>
    `"${label}" is not offered for "${says}" in this home, by your other answers. Type one of: ${ids.join(', ')}, not sure.`,
  noPair: (typed: string) =>
    `"${typed}" is not a pair. Type what to try and its value with = between them, such as goal=48.`,
  noKey: (typed: string, near: string | null, keys: readonly string[]) =>
    `Nothing here is called "${typed}".${near === null ? '' : ` Did you mean "${near}"?`} You can try ${keys.join(', ')}, or any question by its id in the home file.`,
  twice: (key: string) => `"${key}" stands there twice. Try one value at a time.`,
  fixed: ({ says }: Question) => `"${says}" is nothing to try. Change it in the interview.`,
  notAsked: ({ says }: Question) =>
    `"${says}" is not asked of this home, by your other answers. So there is nothing to try.`,
  noSize: (typed: string) =>
    `"${typed}" is no step of size. Type size=larger, or size=smaller. The plan chooses the size by itself.`,
  noSuchSize: 'What is advised comes in no such size here.',
  noRefill: (typed: string, says: string) =>
    `"${typed}" is no time of a refill. Type refill=no, or the days until it comes, such as refill=2. ${says}`,
  isThere: (label: string) => `"${label}" must keep running already.`,
  isNotThere: (label: string) => `"${label}" is not among what must keep running.`,
  unusual: (says: string, then: string) =>
    `${then} is more or less than most homes have for "${says}". It is tried as you typed it.`,
  bringsUp: (says: readonly string[]) =>
    `It would ask you besides: ${says.join('; ')}. Until then each counts as "not sure".`,
  moveFirst: 'Nothing is moved yet. Left and Right move the line that is marked.',
  keepsNoSize:
    'The size is no answer of yours: the plan chooses it. It follows from how long you want to manage, what must run, and the money.',
  end: 'This line goes no further that way.',
  asNow: 'as it is now',
  size: 'Size',
  smaller: 'one step smaller',
  larger: 'one step larger',
  asAdvised: 'as the plan has it',
  load: 'Must keep running',
  without: (label: string) => `without "${label}"`,
  with: (label: string) => `with "${label}" too`,
  refill: 'More fuel',
  noFuel: 'none counted',
  after: (said: string) => `after ${said}`,
} as const;
