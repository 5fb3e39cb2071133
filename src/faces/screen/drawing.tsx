import { Box, Text, useCursor } from 'ink';
import TextInput from 'ink-text-input';
import { masked } from '../../quantity/visible';
import type { Frame } from './frame';
import type { Line, Span } from './line';

const TONES = { accent: 'cyan', alarm: 'red', caution: 'yellow' } as const;
const neverChanges = () => {};

/** Draws a frame. It reads no key: the reducer has done that. */
export function Drawing({ frame }: { readonly frame: Frame }) {
  const { setCursorPosition } = useCursor();
  setCursorPosition(frame.cursor ?? undefined);
  return (
    <Box flexDirection="column">
      {frame.lines.map((line, i) => (
        // Lines have no identity of their own: a line is its place.
        // biome-ignore lint/suspicious/noArrayIndexKey: see above
        <DrawnLine key={i} line={line} />
      ))}
    </Box>
  );
}

function DrawnLine({ line }: { readonly line: Line }) {
  if (line.length === 0) return <Text> </Text>;
  return (
    <Text wrap="truncate-end">
      {line.map((span, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a span is its place in the line
        <DrawnSpan key={i} span={span} />
      ))}
    </Text>
  );
}

function DrawnSpan({ span }: { readonly span: Span }) {
  if (span.field === true) {
    return (
      <TextInput
        value={masked(span.text)}
        onChange={neverChanges}
        focus={false}
        showCursor={false}
      />
    );
  }
  return (
    <Text
      bold={span.bold ?? false}
      dimColor={span.dim ?? false}
      color={span.tone && TONES[span.tone]}
    >
      {span.painted === true ? maskedBetweenColors(span.text) : masked(span.text)}
    </Text>
  );
}

/** Everything a terminal would obey masked, but for colors and weights (SGR, ECMA-48 8.3.117). */
function maskedBetweenColors(text: string): string {
  const parts = text.split(COLORS);
  return parts.map((part, i) => (i % 2 === 1 ? part : masked(part))).join('');
}

const COLORS = /(\x1b\[[0-9;]*m)/;
