export { Garment, type PanelOptions } from './garment.ts';
export {
  clamp,
  corner,
  cornerAt,
  direction,
  distance,
  lerp,
  mirrored,
  move,
  type Node,
  nodeAt,
  offsetLine,
  type Reach,
  resample,
  reversed,
  signedArea,
  swell,
  towards,
  turned,
} from './geometry.ts';
export { clampLength, type DrawnLength, FROM_SHOULDER } from './length.ts';
export { buttonMark } from './notions.ts';
export {
  cubics,
  curvePath,
  ellipsePath,
  polygonPath,
  rectanglePath,
  ribbonPath,
  sampleCurve,
  softPath,
} from './paths.ts';
export { group, line, linesBetween, type Painted, pen, ribsBetween, shape, stitch } from './pens.ts';
export { type Random, random, seedOf } from './random.ts';
export { foldMarks, planeMarks, roundMarks } from './shading.ts';
export { blend, fromOklch, oklch, tone } from './tone.ts';
