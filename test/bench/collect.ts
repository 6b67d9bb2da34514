/** Frees what nothing holds any more, so that memory can be measured. Throws where the process was not started for it. */
export const collectGarbage = (): void => {
  if (globalThis.gc === undefined) throw new Error('memory is measured with node --expose-gc: use npm run bench');
  globalThis.gc();
};
