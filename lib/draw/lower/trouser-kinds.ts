import type { KindId } from '../../vocabulary/index.ts';
import type { DrawKind } from '../drawing.ts';
import { group } from '../kit/index.ts';
import { buttonColour } from './button-colour.ts';
import { turnUp } from './cuffs.ts';
import { COPPER, denimFade, denimThread } from './denim.ts';
import { fly, hemStitch, scoopPocket, seamStitching, slantPocket, waistPleats } from './front.ts';
import { legDrape, legFolds, legShade, pressedCrease } from './leg-folds.ts';
import { seamPen } from './seam-pen.ts';
import { drawTrousers, type TrouserRecipe } from './trousers.ts';
import { beltLoops, sewnBand, shankButton, sideAdjusters } from './waistband.ts';

const FIVE_LOOPS = [-0.88, -0.48, 0.48, 0.88];
const fivePocket = (block: TrouserRecipe['block'], faded: boolean): TrouserRecipe => ({
  block,
  onLeg: (t, leg) => {
    const thread = denimThread(t.garment);
    return [
      ...(faded ? [denimFade(t.garment, leg, t.measures)] : []),
      ...legShade(t.garment, leg, t.measures),
      ...legFolds(t.garment, leg, t.measures),
      ...(t.measures.hem > 26 ? legDrape(t.garment, leg, t.measures, 0.8) : []),
      seamStitching(t, leg, thread),
      hemStitch(t, leg, thread, 1.3, 0.85),
      scoopPocket(t, leg, thread, faded ? COPPER : undefined),
    ];
  },
  front: (t) => fly(t, denimThread(t.garment), 2),
  band: (t) => {
    const thread = denimThread(t.garment);
    sewnBand(t, { thread, opacity: 0.85 });
    beltLoops(t, FIVE_LOOPS, { width: 1.3, thread });
    shankButton(t, 0.6, t.measures.band / 2 + 1.2, faded ? COPPER : buttonColour(t.garment.cloth.ground));
  },
});

const chinos: TrouserRecipe = {
  block: { waist: 37.5, hip: 48.5, rise: 27, band: 3.8 },
  onLeg: (t, leg) => [
    ...legShade(t.garment, leg, t.measures),
    ...legFolds(t.garment, leg, t.measures),
    slantPocket(t, leg),
  ],
  hem: (t, leg) => turnUp(t, leg, 3.6),
  front: (t) => fly(t, t.garment.cloth.ink),
  band: (t) => {
    sewnBand(t, { thread: t.garment.cloth.ink, opacity: 0.5 });
    beltLoops(t, FIVE_LOOPS);
    t.garment.button(0.8, t.measures.band / 2 + 1.1, 0.72, buttonColour(t.garment.cloth.ground));
  },
};

const pressed = (
  pleats: number,
  finish: Pick<TrouserRecipe, 'band' | 'block'> & { readonly turnUps: number },
): TrouserRecipe => ({
  block: finish.block,
  onLeg: (t, leg) => [
    ...legShade(t.garment, leg, t.measures),
    ...legFolds(t.garment, leg, t.measures, 0.72),
    waistPleats(t, leg, pleats),
    pressedCrease(t.garment, leg, t.measures, pleats > 0 ? t.measures.band : t.measures.rise * 0.55),
    slantPocket(t, leg),
  ],
  ...(finish.turnUps > 0 && { hem: (t, leg) => turnUp(t, leg, finish.turnUps) }),
  front: (t) => fly(t, t.garment.cloth.bright),
  band: finish.band,
});

const tailored = pressed(2, {
  block: { waist: 36.5, hip: 48.5, rise: 29, band: 4.4 },
  turnUps: 4,
  band: (t) => {
    sewnBand(t, { overlap: false });
    const { band } = t.measures;
    t.garment.add(
      group([
        seamPen(
          t.garment,
          [
            [-4.6, 1],
            [-4.9, band * 0.5 + 1],
            [-4.5, band + 1.2],
          ],
          0.34,
          0.9,
        ),
      ]),
    );
    sideAdjusters(t, buttonColour(t.garment.cloth.ground));
  },
});

const suit = pressed(0, {
  block: { waist: 37, hip: 48, rise: 27.5, band: 4 },
  turnUps: 0,
  band: (t) => {
    sewnBand(t);
    beltLoops(t, FIVE_LOOPS);
    t.garment.button(0.9, t.measures.band / 2 + 1.1, 0.7, buttonColour(t.garment.cloth.ground));
  },
});

const wide: TrouserRecipe = {
  block: { waist: 36, hip: 48, rise: 31, band: 5 },
  roundness: 0.6,
  onLeg: (t, leg) => [
    ...legShade(t.garment, leg, t.measures),
    ...legFolds(t.garment, leg, t.measures, 0.6),
    ...legDrape(t.garment, leg, t.measures),
    waistPleats(t, leg, 1),
    pressedCrease(t.garment, leg, t.measures),
    slantPocket(t, leg),
  ],
  front: (t) => fly(t, t.garment.cloth.bright),
  band: (t) => {
    sewnBand(t);
    beltLoops(t, [-0.88, -0.52, 0.52, 0.88]);
    t.garment.button(1, t.measures.band / 2 + 1.1, 0.75, buttonColour(t.garment.cloth.ground));
  },
};

const kind =
  (recipe: TrouserRecipe): DrawKind =>
  (piece, detail) =>
    drawTrousers(piece, detail, recipe);

/** Trousers with a sewn waistband and a fly. */
export const TROUSERS = {
  jeans: kind(fivePocket({ waist: 38, hip: 48, rise: 26, band: 3.8 }, true)),
  'wide jeans': kind(fivePocket({ waist: 36.5, hip: 48, rise: 30, band: 4.2 }, true)),
  'corduroy trousers': kind(fivePocket({ waist: 37.5, hip: 48.5, rise: 27.5, band: 4 }, false)),
  chinos: kind(chinos),
  'tailored trousers': kind(tailored),
  'suit trousers': kind(suit),
  'wide trousers': kind(wide),
} satisfies Partial<Record<KindId, DrawKind>>;
