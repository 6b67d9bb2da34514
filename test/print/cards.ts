import sharp from 'sharp';

/** A plain picture in the shape of a card, different for each number. */
export const cardPicture = (number: number, format: 'jpeg' | 'png' = 'jpeg'): Promise<Uint8Array> =>
  sharp({
    create: { width: 1080, height: 1350, channels: 3, background: { r: (number * 40) % 256, g: 120, b: 90 } },
  })
    .toFormat(format)
    .toBuffer();
