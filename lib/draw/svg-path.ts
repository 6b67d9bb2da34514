const TOKEN = /[MLCQZ]|-?\d*\.?\d+(?:e-?\d+)?/g;
const COORDINATES: Readonly<Record<string, number>> = { M: 2, L: 2, C: 6, Q: 4, Z: 0 };

const MINUS = 45;
const POINT = 46;

/** `-0.5` → `-.5`, at most three decimals. */
export const shortNumber = (value: number): string => {
  const thousandths = Math.round(value * 1000);
  const text = String(thousandths / 1000);
  if (thousandths > 0 && thousandths < 1000) return text.slice(1);
  return thousandths < 0 && thousandths > -1000 ? `-${text.slice(2)}` : text;
};

/**
 * The same path in the shortest form: relative commands, no spare zeros or spaces, smooth quadratics as `t`.
 * Absolute M, L, C, Q and Z in; no number moves by more than its own rounding.
 */
export const compactPath = (path: string): string => {
  const tokens = path.match(TOKEN) ?? [];
  let out = '';
  let [x, y, startX, startY] = [0, 0, 0, 0];
  /** Where the last quadratic's control point was, as the reader of the path will reckon it. */
  let control: readonly [number, number] | undefined;
  let command = '';
  let last = '';
  let lastPointed = false;
  const put = (letter: string, numbers: readonly number[]) => {
    let text = letter === last && letter !== 'm' && letter !== 'z' ? '' : letter;
    // after a letter no gap is needed; nor before a minus, nor before a point when the number before has one
    let tight = text !== '';
    let pointed = tight || lastPointed;
    for (const value of numbers) {
      const short = shortNumber(value);
      const first = short.charCodeAt(0);
      text += tight || first === MINUS || (pointed && first === POINT) ? short : ` ${short}`;
      tight = false;
      pointed = short.includes('.');
    }
    last = letter;
    lastPointed = pointed;
    out += text;
  };
  for (let i = 0; i < tokens.length; ) {
    const token = tokens[i] ?? '';
    if (token in COORDINATES) {
      command = token;
      i++;
      if (command === 'Z') {
        put('z', []);
        [x, y] = [startX, startY];
        control = undefined;
        continue;
      }
    }
    const count = COORDINATES[command] ?? 2;
    const at: number[] = [];
    for (const end = Math.min(tokens.length, i + count); i < end; i++) at.push(Number(tokens[i]));
    const endX = at[count - 2] ?? x;
    const endY = at[count - 1] ?? y;
    const relative: number[] = [];
    for (let k = 0; k < at.length; k++) relative.push((at[k] ?? 0) - (k % 2 === 0 ? x : y));
    if (command === 'M') {
      put('m', relative);
      [startX, startY] = [endX, endY];
      command = 'L';
      control = undefined;
      last = 'l';
    } else if (command === 'Q') {
      const [cx = x, cy = y] = at;
      const mirrored = control && ([2 * x - control[0], 2 * y - control[1]] as const);
      if (mirrored && Math.abs(mirrored[0] - cx) < 0.025 && Math.abs(mirrored[1] - cy) < 0.025) {
        put('t', relative.slice(2));
        control = mirrored;
      } else {
        put('q', relative);
        control = [cx, cy];
      }
    } else {
      put(command === 'C' ? 'c' : 'l', relative);
      control = undefined;
    }
    [x, y] = [endX, endY];
  }
  return out;
};
