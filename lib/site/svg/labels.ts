/** A dot that wants its name beside it. */
export interface Labelled {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly text: string;
}

/** A name with its place: the baseline's start, middle or end. */
export interface Label {
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly text: string;
}

interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Size of the letters, and their mean width as a share of it; wide enough for any name in Noto Sans. */
export const LETTERS = 11;
const LETTER_WIDTH = 0.58;
const GAP = 3;
const DIAGONAL = Math.SQRT1_2;

const overlaps = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** The square within a dot's circle, a little larger: a name may cut the corners of the square around it. */
const boxOfDot = ({ x, y, radius }: Labelled): Box => {
  const half = radius * 0.85;
  return { left: x - half, right: x + half, top: y - half, bottom: y + half };
};

/** Where a name may stand, best first: right, left, below, above, and the corners between. */
const places = ({ x, y, radius, text }: Labelled): readonly { readonly label: Label; readonly box: Box }[] => {
  const width = text.length * LETTERS * LETTER_WIDTH;
  const middle = y + LETTERS * 0.36;
  const at = (labelX: number, labelY: number, anchor: Label['anchor']): { label: Label; box: Box } => {
    const left = anchor === 'start' ? labelX : anchor === 'end' ? labelX - width : labelX - width / 2;
    return {
      label: { x: Math.round(labelX * 10) / 10, y: Math.round(labelY * 10) / 10, anchor, text },
      box: { left, right: left + width, top: labelY - LETTERS * 0.8, bottom: labelY + LETTERS * 0.25 },
    };
  };
  return [
    at(x + radius + GAP, middle, 'start'),
    at(x - radius - GAP, middle, 'end'),
    at(x, y + radius + GAP + LETTERS * 0.8, 'middle'),
    at(x, y - radius - GAP - LETTERS * 0.25, 'middle'),
    at(x + radius * DIAGONAL + 2, y - radius * DIAGONAL - 2, 'start'),
    at(x + radius * DIAGONAL + 2, y + radius * DIAGONAL + LETTERS * 0.8 + 2, 'start'),
    at(x - radius * DIAGONAL - 2, y - radius * DIAGONAL - 2, 'end'),
    at(x - radius * DIAGONAL - 2, y + radius * DIAGONAL + LETTERS * 0.8 + 2, 'end'),
  ];
};

const reaches = ({ left, top, right, bottom }: Box, middle: number): number =>
  Math.max(...[left, right].flatMap((x) => [top, bottom].map((y) => Math.hypot(x - middle, y - middle))));

/**
 * Names beside dots, first come first served, none over a dot or another name or outside a circle. A name without room is
 * left out: what it says must stand elsewhere too.
 */
export const placeLabels = (
  dots: readonly Labelled[],
  circle: { readonly middle: number; readonly radius: number },
): readonly Label[] => {
  const taken: Box[] = dots.map(boxOfDot);
  return dots.flatMap((dot) => {
    const free = places(dot).find(
      ({ box }) => reaches(box, circle.middle) <= circle.radius && taken.every((other) => !overlaps(box, other)),
    );
    if (free === undefined) return [];
    taken.push(free.box);
    return [free.label];
  });
};
