/** The command that leads to the list of what was asked, and not into what a short talk left out. */
export function changeCall(call: string, short: boolean, home: string): string {
  return `${call} ${short ? '--short ' : ''}--change ${home}`;
}
