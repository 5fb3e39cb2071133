import { demandRange } from '../demand-range';
import { type RoofFace, slopeFactor } from './roof-face';

/** One way the rule lets panels be laid: strip at the ridge, path to it, and how much may be covered. */
export interface RoofRule {
  /** Clear strip at the ridge, measured on the slope, inches. */
  ridgeSetbackIn: number;
  /** Path from eave to ridge on each face, inches. */
  pathwayIn: number;
  /** Panels may cover this share of the whole roof as seen from above, 0 to 1. */
  planShareUpTo: number;
  planShareUpToSprinklered: number;
  /** A face that rises no more than this in 12 needs no strips. */
  exemptPitchRise: number;
}

/** Area left for panels under the better of the rules. */
export interface UsableRoof {
  /** On the slope, ft2, face by face in the order given. */
  facesFt2: number[];
  totalFt2: number;
  /** The strip at the ridge that goes with it, inches; 0 when every face is exempt. */
  ridgeSetbackIn: number;
  /** True when the share of the whole roof, not the strips, sets the area. */
  heldByShare: boolean;
}

export interface Roof {
  faces: readonly RoofFace[];
  /** The whole roof as seen from above, ft2. */
  planFt2: number;
  sprinklered: boolean;
}

/**
 * Room for panels on a roof: each face less one path from eave to ridge and the strip at the ridge,
 * all faces together held to the rule's share of the whole roof. Of several rules the one that
 * leaves more room is taken: the wider strip often does, because it lifts the share.
 * Faces must have tilts from 0 to 85 degrees. Source: IRC 2018/2021, R324.6.1, R324.6.2.
 */
export function usableRoof(roof: Roof, rules: readonly RoofRule[]): UsableRoof {
  for (const face of roof.faces) {
    demandRange(face.tiltDeg, { name: `tilt of ${face.name}`, unit: 'degrees', min: 0, max: 85 });
  }
  const [first, ...others] = rules.map((rule) => underRule(roof, rule));
  if (first === undefined) throw new RangeError('usable roof needs at least one rule');
  return others.reduce((best, next) => (next.totalFt2 > best.totalFt2 ? next : best), first);
}

function underRule(roof: Roof, rule: RoofRule): UsableRoof {
  const open = roof.faces.map((face) => openFt2(face, rule));
  const coveredPlan = open.reduce(
    (sum, ft2, i) => sum + ft2 / slopeFactor(roof.faces[i]!.tiltDeg),
    0,
  );
  const strips = roof.faces.some((face) => !isExempt(face, rule));
  const share = roof.sprinklered ? rule.planShareUpToSprinklered : rule.planShareUpTo;
  const allowedPlan = strips ? share * roof.planFt2 : coveredPlan;
  const heldByShare = coveredPlan > allowedPlan;
  const keep = heldByShare ? allowedPlan / coveredPlan : 1;
  const facesFt2 = open.map((ft2) => ft2 * keep);
  return {
    facesFt2,
    totalFt2: facesFt2.reduce((sum, ft2) => sum + ft2, 0),
    ridgeSetbackIn: strips ? rule.ridgeSetbackIn : 0,
    heldByShare,
  };
}

function openFt2(face: RoofFace, rule: RoofRule): number {
  const slopeFt = face.planDepthFt * slopeFactor(face.tiltDeg);
  if (isExempt(face, rule)) return face.eaveFt * slopeFt;
  const widthFt = Math.max(0, face.eaveFt - rule.pathwayIn / 12);
  return widthFt * Math.max(0, slopeFt - rule.ridgeSetbackIn / 12);
}

function isExempt(face: RoofFace, rule: RoofRule): boolean {
  return Math.tan((face.tiltDeg * Math.PI) / 180) * 12 <= rule.exemptPitchRise + 1e-9;
}
