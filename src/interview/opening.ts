import type { Interview } from './questions/question';

/**
 * Questions of the opening about the home itself: danger is asked afresh at every sitting, and the name only names the
 * files, so that no first plan stands after these two alone.
 */
export function asksOfHome({ opening, dangers }: Interview, id: string): boolean {
  return opening.includes(id) && ![dangers.question, 'home-name'].includes(id);
}
