import type { LeavingLine } from '../../plan/leaving-point';
import type { Finding } from '../../rules/rule';
import type { RuleId } from '../../tables/rules';
import type { Words } from '../../words/words';

type RoomLine = Extract<LeavingLine, { code: 'cold' | 'heat' }>;

/** What kills here that says of one of these lines all that the line says. */
const saidAbove: Readonly<Partial<Record<RuleId, LeavingLine['code']>>> = {
  'co-signs': 'co-alarm',
  'cold-room': 'cold',
  'heat-room': 'heat',
};

/** When to leave, said for the night: nothing that stands under what kills already, and cold and heat in one line. */
export function leavingOnTheNight(
  lines: readonly LeavingLine[],
  kills: readonly Finding[],
  words: Words,
): string[] {
  const above = kills.map(({ id }) => saidAbove[id]);
  // With one road out somebody leaves sooner than the caution says.
  const left = lines.filter((line) => !above.includes(line.code) || (isRoom(line) && line.oneRoad));
  const rooms = left.filter(isRoom);
  return left.flatMap((line) => {
    if (rooms.length < 2 || !isRoom(line)) return [words.sheets.nightLeaving(line)];
    return line === rooms[0] ? [words.sheets.nightRooms(rooms)] : [];
  });
}

const isRoom = (line: LeavingLine): line is RoomLine =>
  line.code === 'cold' || line.code === 'heat';
