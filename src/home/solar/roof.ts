import { combinedLoss } from '../../physics/panel/combined-loss';
import type { PanelTraits } from '../../physics/panel/panel-hours';
import type { Plane } from '../../physics/panel/plane-year';
import { panelRoomKw } from '../../physics/roof/panel-room';
import { type RoofFace, slopeFactor, tiltOfPitch } from '../../physics/roof/roof-face';
import { usableRoof } from '../../physics/roof/usable-roof';
import { panelAssumption, panelLosses } from '../../tables/panel-figures';
import { practice } from '../../tables/practice-figures';
import { roofPathways } from '../../tables/roof-pathways';
import type { Facts } from '../facts';
import { ownSolarKw } from './own-solar';
import { usualPanels } from './panel-traits';

/** The roof face that panels would lie on, and how much of it they may cover. */
export interface Roof {
  readonly plane: Plane;
  /** Area told, and what access pathways leave of it, ft2 on the slope. */
  readonly areaFt2: number;
  readonly usableFt2: number;
  /** Rated panels that fit beside those that are there, kW. */
  readonly roomKw: number;
  readonly shadeShare: number;
}

/** Degrees clockwise from north; the yield of east and west, and of southeast and southwest, is the same within a few percent. */
const facing: Readonly<Record<string, number>> = {
  south: 180,
  'southeast-southwest': 135,
  'east-west': 90,
  north: 0,
  flat: 180,
};

/** Share of the sun that shade takes, to be measured on the roof. */
const shade: Readonly<Record<string, number>> = {
  little: practice('roof-shade-little'),
  half: practice('roof-shade-half'),
  most: practice('roof-shade-most'),
};

/** A usual roof where only its area was told. */
const PITCH_RISE = practice('roof-rise-in-12');
const EAVE_PER_DEPTH = practice('roof-eave') / practice('roof-depth');
const COVERED_SHARE = practice('roof-covered-share');
const FLAT_TILT_DEG = practice('flat-roof-tilt');

/** Where panels are told and their roof is not: no room for more, half of them in the shade, facing east or west. */
const UNKNOWN_ROOF: Roof = {
  plane: { tiltDeg: tiltOfPitch(PITCH_RISE), facingDeg: 90 },
  areaFt2: 0,
  usableFt2: 0,
  roomKw: 0,
  shadeShare: shade.half!,
};

/** The roof for panels, or null where there is none to plan on. */
export function roofOf(facts: Facts): Roof | null {
  const face = facts.value('roof-face');
  const areaFt2 = facts.number('roof-area');
  const own = ownSolarKw(facts);
  if (typeof face !== 'string' || facing[face] === undefined || areaFt2 === null) {
    return own > 0 ? UNKNOWN_ROOF : null;
  }
  const tiltDeg = face === 'flat' ? FLAT_TILT_DEG : tiltOfPitch(PITCH_RISE);
  const usableFt2 = openFt2(areaFt2, tiltDeg);
  return {
    plane: { tiltDeg, facingDeg: facing[face]! },
    areaFt2,
    usableFt2,
    roomKw: Math.max(
      0,
      panelRoomKw({
        areaFt2: usableFt2,
        wattsPerM2: panelAssumption('wattsPerM2'),
        coveredShare: COVERED_SHARE,
      }) - own,
    ),
    shadeShare: shade[String(facts.value('roof-shade'))] ?? shade.most!,
  };
}

/** A roof face is seldom larger than half as much again as the whole floor under it. Our judgement. */
const LARGEST_PER_FLOOR = 1.5;

/** The roof told, where it cannot belong to the home told, ft2; null when the two fit. */
export function roofDoubt(facts: Facts): { roofFt2: number; floorFt2: number } | null {
  const roofFt2 = facts.told('roof-area') ? facts.number('roof-area') : null;
  const floorFt2 = facts.told('home-area') ? facts.number('home-area') : null;
  if (roofFt2 === null || floorFt2 === null || roofFt2 <= LARGEST_PER_FLOOR * floorFt2) return null;
  return { roofFt2, floorFt2 };
}

/** Area less access pathways (IRC R324.6): two such faces make the whole roof. */
function openFt2(areaFt2: number, tiltDeg: number): number {
  const planFt2 = areaFt2 / slopeFactor(tiltDeg);
  const planDepthFt = Math.sqrt(planFt2 / EAVE_PER_DEPTH);
  const face: RoofFace = { name: 'roof', eaveFt: planFt2 / planDepthFt, planDepthFt, tiltDeg };
  const roof = { faces: [face], planFt2: 2 * planFt2, sprinklered: false };
  return usableRoof(roof, roofPathways.rows).totalFt2;
}

/** Losses of panels on this roof: the usual ones with the told shade in place of the usual, snow by month. */
export function panelTraits(roof: Roof, monthMeanC: readonly number[]): PanelTraits {
  const usual = panelLosses.rows.filter(({ cause }) => cause !== 'shade');
  return usualPanels({
    lossShare: combinedLoss([...usual.map((r) => r.share), roof.shadeShare]),
    tiltDeg: roof.plane.tiltDeg,
    monthMeanC,
  });
}
