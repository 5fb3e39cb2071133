import type { View } from '../../interview/state';
import { WAITING } from '../plan-so-far';
import { NO_PANE, type PaneBelow, paneBelow, paneBeside } from './draft-pane';
import { type Frame, type FrameParts, frameHeight, textWidth } from './frame';
import { hiddenFrame, hiddenState, hideOf, isCommon } from './hiding';
import { type Line, lineWidth } from './line';
import { actNowFrame } from './views/act-now';
import { askFrame } from './views/ask';
import { checkFrame } from './views/check';
import { compareFrame } from './views/compare';
import { helpFrame } from './views/help';
import { labelFrame } from './views/label';
import { planSoFarFrame } from './views/plan-so-far';
import { readBackFrame } from './views/read-back';
import { readingFrame } from './views/reading';
import { tonightFrame, tonightHelpFrame } from './views/tonight';
import { unusualFrame } from './views/unusual';
import { walkFrame } from './views/walk';
import { welcomeFrame } from './views/welcome';

/** From this width on the draft stands beside the question. */
const BESIDE_FROM = 100;
const PANE_WIDTH = 38;
/** A wide window gives the plan more room than a column. */
const WIDE_FROM = 150;
const WIDE_PANE_WIDTH = 60;

/** Views with the plan so far in a few lines below them; in a wide window it stays beside these too, so that nothing jumps. */
const BELOW: readonly View[] = ['ask', 'check'];
const BESIDE: readonly View[] = [...BELOW, 'help', 'label', 'unusual', 'wait', 'walk', 'read-back'];

/** The screen for a state, as data. Pure. */
export function frameOf(parts: FrameParts): Frame {
  const { context, hiding } = parts;
  if (hiding === undefined) return openFrame(parts);
  const state = hiddenState(parts.state, context.interview, hiding);
  const frame = openFrame({ ...parts, state });
  return isCommon(state, context.interview) ? frame : hiddenFrame(frame, hiding);
}

function openFrame(parts: FrameParts): Frame {
  const { state, draft, changed = null, size, glyphs, hiding } = parts;
  const hide = hideOf(hiding);
  const { columns } = size;
  if (columns < BESIDE_FROM || !BESIDE.includes(state.view)) {
    const width = textWidth(columns);
    const pane = BELOW.includes(state.view)
      ? paneBelow({ draft, changed, hide }, width, glyphs)
      : NO_PANE;
    return viewFrame(parts, width, pane);
  }
  const paneWidth = columns >= WIDE_FROM ? WIDE_PANE_WIDTH : PANE_WIDTH;
  const left = textWidth(columns - paneWidth - 3);
  const frame = viewFrame(parts, left, NO_PANE);
  const pane = paneBeside({ draft, changed, hide }, paneWidth);
  return { ...frame, lines: besideEachOther(frame.lines, pane, left, parts) };
}

function viewFrame(parts: FrameParts, width: number, pane: PaneBelow): Frame {
  switch (parts.state.view) {
    case 'welcome':
      return welcomeFrame(parts, width);
    case 'ask':
      return askFrame(parts, width, pane);
    case 'label':
      return labelFrame(parts, width);
    case 'unusual':
      return unusualFrame(parts, width);
    case 'help':
      return helpFrame(parts, width);
    case 'act-now':
      return actNowFrame(parts, width);
    case 'walk':
      return walkFrame(parts, width);
    case 'wait':
      return readingFrame(parts, width, { title: WAITING, text: [] });
    case 'tonight-help':
      return tonightHelpFrame(parts, width);
    case 'tonight':
      return tonightFrame(parts, width);
    case 'first-plan':
    case 'enough':
      return planSoFarFrame(parts, width);
    case 'read-back':
      return readBackFrame(parts, width);
    case 'compare':
      return compareFrame(parts, width);
    case 'check':
      return checkFrame(parts, width, pane.lines);
  }
}

function besideEachOther(
  left: readonly Line[],
  right: readonly Line[],
  width: number,
  { size, glyphs }: FrameParts,
): Line[] {
  const height = Math.min(frameHeight(size.rows), Math.max(left.length, right.length));
  return Array.from({ length: height }, (_, i) => {
    const line = left[i] ?? [];
    const space = ' '.repeat(width - lineWidth(line));
    return [...line, { text: `${space} ${glyphs.bar} `, dim: true }, ...(right[i] ?? [])];
  });
}
