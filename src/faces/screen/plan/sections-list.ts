import type { Glyphs } from '../glyphs';
import { type Line, styled } from '../line';
import { labelLines } from '../row-lines';
import { windowLines } from '../window-lines';
import type { LaidOut } from './plan-lines';

export const FRONT_PAGE = 'Front page';

/** The name of a section: 0 is the front page. */
export function sectionTitle({ sections }: LaidOut, section: number): string {
  return section === 0 ? FRONT_PAGE : sections[section - 1]!.title;
}

export interface ListParts {
  readonly plan: LaidOut;
  /** The line marked. */
  readonly row: number;
  /** Whether the list is what keys go to. */
  readonly live: boolean;
  readonly width: number;
  readonly height: number;
  readonly glyphs: Glyphs;
}

/** The sections of the plan, numbered, around the one that is marked. */
export function sectionsList({ plan, row, live, width, height, glyphs }: ListParts): Line[] {
  const lines: Line[] = [];
  const starts: number[] = [];
  let [from, to] = [0, 0];
  for (let section = 0; section <= plan.sections.length; section += 1) {
    starts.push(lines.length);
    if (section === row) from = lines.length;
    const title = sectionTitle(plan, section);
    const block = labelLines(`${section + 1}. `, title, section === row, width);
    lines.push(...(live || section === row ? block : styled(textOf(block), { dim: true })));
    if (section === row) to = lines.length - 1;
  }
  return [...windowLines({ lines, starts, from, to, width, height, glyphs }).lines];
}

function textOf(lines: readonly Line[]): string[] {
  return lines.map((line) => line.map(({ text }) => text).join(''));
}
