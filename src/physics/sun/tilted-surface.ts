import { RAD_PER_DEG } from '../angle';

/** One hour of sun on the level and how a plane sees it. All energies in one unit, e.g. Wh/m2. */
export interface TiltedHour {
  /** Beam on the level. */
  beam: number;
  /** Diffuse on the level. */
  diffuse: number;
  /** Outside the air, on the level. */
  extraterrestrial: number;
  /** Beam on the plane over beam on the level; 0 when the sun is behind the plane. */
  beamRatio: number;
  tiltDeg: number;
  /** Share of sun the ground throws back, 0 to 1. */
  albedo: number;
}

/** What reaches the plane, by where it comes from. */
export interface TiltedSun {
  total: number;
  beam: number;
  sky: number;
  ground: number;
}

/**
 * Sun on a tilted plane when the whole sky is equally bright.
 *
 *     IT = Ib Rb + Id (1 + cos b)/2 + I rho (1 - cos b)/2
 *
 * Source: Liu & Jordan 1963 (Duffie & Beckman, 4th ed., eq. 2.15.1).
 */
export function isotropicTilted(hour: TiltedHour): TiltedSun {
  return tilted(hour, 0, 0);
}

/**
 * The same with a bright ring around the sun: the share Ai = Ib/I0 of the diffuse light comes from
 * the sun's direction. Source: Hay & Davies 1980 (Duffie & Beckman, 4th ed., section 2.16).
 */
export function hayDaviesTilted(hour: TiltedHour): TiltedSun {
  return tilted(hour, ringShare(hour), 0);
}

/**
 * The same with a bright horizon as well.
 *
 *     IT = (Ib + Id Ai) Rb + Id (1 - Ai) (1 + cos b)/2 [1 + f sin^3(b/2)] + I rho (1 - cos b)/2
 *     Ai = Ib/I0      f = sqrt(Ib/I)
 *
 * Source: Reindl, Beckman & Duffie 1990 (Duffie & Beckman, 4th ed., eq. 2.16.7).
 */
export function hdkrTilted(hour: TiltedHour): TiltedSun {
  const level = hour.beam + hour.diffuse;
  return tilted(hour, ringShare(hour), level > 0 ? Math.sqrt(hour.beam / level) : 0);
}

function ringShare({ beam, extraterrestrial }: TiltedHour): number {
  return extraterrestrial > 0 ? Math.min(1, beam / extraterrestrial) : 0;
}

function tilted(hour: TiltedHour, ring: number, horizon: number): TiltedSun {
  const { skyView, horizonView } = viewAt(hour.tiltDeg);
  const beam = hour.beam * hour.beamRatio;
  const sky =
    hour.diffuse * (ring * hour.beamRatio + (1 - ring) * skyView * (1 + horizon * horizonView));
  const ground = (hour.beam + hour.diffuse) * hour.albedo * (1 - skyView);
  return { total: beam + sky + ground, beam, sky, ground };
}

/** What a plane sees: (1 + cos b)/2 of the sky, and sin^3(b/2) of the horizon. */
function viewOf(tiltDeg: number) {
  const b = tiltDeg * RAD_PER_DEG;
  return { tiltDeg, skyView: (1 + Math.cos(b)) / 2, horizonView: Math.sin(b / 2) ** 3 };
}

let last = viewOf(0);

/** Hour after hour asks for the same plane, so the last one is kept. */
function viewAt(tiltDeg: number) {
  if (last.tiltDeg !== tiltDeg) last = viewOf(tiltDeg);
  return last;
}
