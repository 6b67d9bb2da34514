/** Tells how far long work is. */
export interface Progress {
  /** What is done now, for somebody who watches; said over the last. */
  step(what: string, done?: number, of?: number): void;
  /** A line that stays, a few a guide. */
  line(text: string): void;
  end(): void;
}

const CLEAR = '\r\u001b[2K';

/** Steps on one line of a terminal, lines above it. */
export const terminalProgress = (write: (text: string) => void): Progress => ({
  step: (what, done, of) => write(`${CLEAR}${what}${done === undefined ? '' : ` ${done} of ${of ?? done}`}`),
  line: (text) => write(`${CLEAR}${text}\n`),
  end: () => write(CLEAR),
});

/** Lines alone, for a log that nobody watches. */
export const lineProgress = (write: (line: string) => void): Progress => ({
  step: () => {},
  line: write,
  end: () => {},
});
