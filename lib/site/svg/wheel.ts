import type { PaletteColour } from '../../colour/index.ts';
import type { SiteVoice } from '../voice.ts';

export interface WheelDot {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly fill: string;
  readonly title: string;
}

/** A colour wheel: hue as the angle, chroma as the way out from the middle, what is seen of it as the size. */
export interface Wheel {
  readonly size: number;
  readonly dots: readonly WheelDot[];
}

const SIZE = 360;
const RIM = 150;
/** OKLCH chroma at the rim: about the strongest dyed cloth. Own choice. */
const STRONGEST = 0.2;

export const paletteWheel = (colours: readonly PaletteColour[], { word }: Pick<SiteVoice, 'word'>): Wheel => {
  const round = (value: number): number => Math.round(value * 10) / 10;
  return {
    size: SIZE,
    dots: colours.map(({ colour, share }) => {
      const { c: chroma, h: hue } = colour.oklch;
      const out = Math.min(1, chroma / STRONGEST) * RIM;
      const angle = (hue * Math.PI) / 180;
      return {
        x: round(SIZE / 2 + out * Math.cos(angle)),
        y: round(SIZE / 2 - out * Math.sin(angle)),
        radius: round(5 + Math.sqrt(share) * 26),
        fill: colour.hex,
        title: word('colour name', { colour: colour.name }),
      };
    }),
  };
};
