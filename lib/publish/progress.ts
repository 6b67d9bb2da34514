/** Tells a watching person how far long work is; silent when nobody watches. */
export interface Progress {
  step(what: string, done?: number, of?: number): void;
  end(): void;
}

export const silent: Progress = { step: () => {}, end: () => {} };

/** Progress on one line of a terminal. */
export const terminalProgress = (write: (text: string) => void): Progress => ({
  step: (what, done, of) => write(`\r\u001b[2K${what}${done === undefined ? '' : ` ${done} of ${of ?? done}`}`),
  end: () => write('\r\u001b[2K'),
});
