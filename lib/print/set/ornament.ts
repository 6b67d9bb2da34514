import type { Area } from '../paper.ts';
import { nums } from '../pdf/numbers.ts';
import type { Surface } from '../pdf/surface.ts';
import { type Block, drawn, unread } from './block.ts';
import type { Setter, Type } from './setter.ts';

const PITCH = 2.5;

/** A running stitch: whole stitches from end to end. */
export const stitch = (
  surface: Surface,
  [x1, y1]: readonly [number, number],
  [x2, y2]: readonly [number, number],
  { colour, width = 0.8, pitch = PITCH }: { colour: string; width?: number; pitch?: number },
): void => {
  const length = Math.hypot(x2 - x1, y2 - y1);
  const count = Math.max(1, Math.round((length + pitch * 0.4) / pitch));
  const step = (length + pitch * 0.4) / count;
  surface.line(x1, y1, x2, y2, { colour, width, dash: [step * 0.6 - 0.01, step * 0.4], round: true });
};

/** A running stitch across the measure, read by nobody; `height` millimetres with the air below it. */
export const stitchRule = (colour: string, { width = 0.8, height = 1 } = {}): Block =>
  unread(
    drawn(height, (surface, { x, y, width: across }) => stitch(surface, [x, y], [x + across, y], { colour, width })),
  );

const PAPER = '#ffffff';

/** A shirt button with four holes, worn on that journey: a full disc, so that a poor printer or small screen shows no face. */
export const button = (surface: Surface, x: number, y: number, radius: number, colour: string): void => {
  surface.circle(x, y, radius, { fill: colour });
  const hole = radius * 0.32;
  for (const [across, down] of [
    [-1, -1],
    [1, -1],
    [-1, 1],
    [1, 1],
  ] as const) {
    surface.circle(x + across * hole, y + down * hole, radius * 0.18, { fill: PAPER });
  }
};

/** Two waves after a figure: estimated, not weighed. */
export const estimateMark = (surface: Surface, x: number, base: number, colour: string): void => {
  const wave = (y: number): string =>
    `${nums(x, y)} m ${nums(x + 0.45, y - 0.7, x + 0.8, y - 0.7, x + 1.15, y - 0.15)} c ${nums(x + 1.5, y + 0.4, x + 1.85, y + 0.4, x + 2.3, y - 0.3)} c`;
  const stroke = { colour, width: 0.6, round: true };
  surface.shape(wave(base - 1.35), { stroke });
  surface.shape(wave(base - 0.45), { stroke });
};

interface Tape {
  readonly unit: 'cm' | 'in';
  readonly colour: string;
  readonly light: string;
  readonly type: Type;
}

/** A measuring tape down the edge of the paper, true when printed at 100 %. */
export const tape = (surface: Surface, setter: Setter, x: number, { y, height }: Area, look: Tape): void => {
  const inches = look.unit === 'in';
  const step = inches ? 25.4 / 16 : 1;
  const whole = inches ? 16 : 10;
  surface.artifact(() => {
    const label = (content: string, tickY: number): void => {
      surface.text(setter.line([{ text: content, type: look.type }]).runs, x + 4.2, tickY + 0.9);
    };
    for (let tick = 0; tick * step <= height + 1e-6; tick++) {
      const tickY = y + tick * step;
      const major = tick % whole === 0;
      const length = major ? 3.4 : tick % (whole / 2) === 0 ? 2.2 : inches && tick % 4 === 0 ? 1.6 : 1;
      surface.line(x, tickY, x + length, tickY, {
        colour: major ? look.colour : look.light,
        width: major ? 0.4 : 0.25,
      });
      if (major) label(tick === 0 ? look.unit : String(tick / whole), tickY);
    }
  });
};

/** Marks outside the corners of an area, to cut along. */
export const cropMarks = (
  surface: Surface,
  area: Area,
  { gap, length, colour }: { gap: number; length: number; colour: string },
): void => {
  const stroke = { colour, width: 0.25 };
  surface.artifact(() => {
    for (const x of [area.x, area.x + area.width]) {
      surface.line(x, area.y - gap, x, area.y - gap - length, stroke);
      surface.line(x, area.y + area.height + gap, x, area.y + area.height + gap + length, stroke);
    }
    for (const y of [area.y, area.y + area.height]) {
      surface.line(area.x - gap, y, area.x - gap - length, y, stroke);
      surface.line(area.x + area.width + gap, y, area.x + area.width + gap + length, y, stroke);
    }
  });
};
