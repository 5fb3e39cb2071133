import type { State } from '../../interview/state';
import { type Line, styled, wrapText } from './line';

/** The error, which begins with its name, why nothing is kept, and what we understood or must tell. */
export function messageLines({ error, notice, unsaved }: State, width: number): Line[] {
  return [
    ...(error === null
      ? []
      : styled(wrapText(`Error: ${error}`, width), { bold: true, tone: 'alarm' })),
    ...(unsaved === null || unsaved === error
      ? []
      : styled(wrapText(unsaved, width), { bold: true, tone: 'alarm' })),
    ...(notice === null ? [] : styled(wrapText(notice, width), { tone: 'caution' })),
  ];
}
