const M2_PER_FT2 = 0.09290304;

/**
 * Rated kW of panels that an area holds: area x watts a square meter x the share that panels cover.
 * `coveredShare` (0 to 1) allows for edges and gaps between whole panels.
 */
export function panelRoomKw(room: {
  areaFt2: number;
  wattsPerM2: number;
  coveredShare: number;
}): number {
  return (room.areaFt2 * M2_PER_FT2 * room.wattsPerM2 * room.coveredShare) / 1000;
}
