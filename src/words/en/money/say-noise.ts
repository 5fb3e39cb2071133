import type { Noise } from '../../../tables/prices/noise';

/** How loud a route is, for a cell of a table. */
export function sayNoise(noise: Noise): string {
  switch (noise.code) {
    case 'none':
      return 'none';
    case 'as-the-vehicle':
      return 'none for a battery-only vehicle; engine noise and exhaust for a hybrid or engine vehicle';
    case 'under':
      return `under ${noise.dba} dBA`;
    case 'fan-under':
      return `fan, under ${noise.dba} dBA`;
    case 'in-the-room':
      return `${noise.lowDba} to ${noise.highDba} dBA in the room`;
    case 'close-by':
      return `${noise.lowDb} to ${noise.highDb} dB by size, close by`;
    case 'at-distance':
      return `${noise.lowDba} to ${noise.highDba} dBA at ${noise.feet} ft`;
  }
}
