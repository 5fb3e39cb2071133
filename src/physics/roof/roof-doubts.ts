import type { RoofFace } from './roof-face';

/** What a household told of a roof that cannot be, or can hardly be. */
export interface RoofDoubts {
  /** The faces that can be used as told. */
  faces: RoofFace[];
  /** One sentence for each face left out and each number that looks wrong. */
  sentences: string[];
}

/** Eaves and porches make a roof larger than the floor below it, seldom by more than this. */
const LARGEST_ROOF_PER_FLOOR = 1.5;

/**
 * Look over the roof as told. A face with an impossible tilt or size is left out and said so; a roof
 * much larger than the ground floor under it is kept and said so. `groundFloorFt2` null: not known.
 */
export function roofDoubts(told: {
  faces: readonly RoofFace[];
  groundFloorFt2: number | null;
}): RoofDoubts {
  const sentences: string[] = [];
  const faces = told.faces.filter((face) => {
    const wrong = whatIsWrong(face);
    if (wrong !== null) sentences.push(`${face.name}: ${wrong}; this face is left out.`);
    return wrong === null;
  });
  const planFt2 = faces.reduce((sum, face) => sum + face.eaveFt * face.planDepthFt, 0);
  const { groundFloorFt2 } = told;
  if (groundFloorFt2 !== null && planFt2 > LARGEST_ROOF_PER_FLOOR * groundFloorFt2) {
    sentences.push(
      `The roof faces you gave cover ${Math.round(planFt2)} ft2, more than the ${Math.round(groundFloorFt2)} ft2 of ground floor under them can explain; measure again before you order panels.`,
    );
  }
  return { faces, sentences };
}

function whatIsWrong({ tiltDeg, eaveFt, planDepthFt }: RoofFace): string | null {
  if (!Number.isFinite(tiltDeg) || tiltDeg < 0) return 'the slope must be 0 degrees (flat) or more';
  if (tiltDeg > 90) return `a slope of ${tiltDeg} degrees would hang over; 90 is a wall`;
  if (tiltDeg > 85) return `a slope of ${tiltDeg} degrees is a wall, not a roof`;
  if (!(eaveFt > 0 && planDepthFt > 0)) return 'length and depth must be more than zero';
  if (!Number.isFinite(eaveFt * planDepthFt)) return 'length and depth must be plain numbers';
  return null;
}
