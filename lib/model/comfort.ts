import type { ActivityId } from '../vocabulary/activities.ts';
import type { Feels } from '../vocabulary/feels.ts';

/** Insulation of a look in clo, from all removable layers off to all on. */
export interface CloRange {
  readonly off: number;
  readonly on: number;
}

/** A step of dressing: which layers are on, and the air temperatures it is right for. */
export interface LayerStep {
  /** Piece ids of the layers worn at this step. */
  readonly layers: readonly string[];
  readonly lowC: number;
  readonly highC: number;
}

/** For which air temperatures a look is comfortable at one activity. */
export interface LookComfort {
  readonly activity: ActivityId;
  readonly where: 'indoors' | 'outdoors';
  /** Whom it is for, when not for most people. */
  readonly feels?: Feels;
  readonly clo: CloRange;
  readonly lowC: number;
  readonly highC: number;
  /** From the least to the most layers. */
  readonly steps: readonly LayerStep[];
}
