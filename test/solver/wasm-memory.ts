/** Bytes of the WebAssembly memories made from now on; `end` stops watching. A memory grows and never shrinks. */
export const watchWasmMemory = (): { readonly bytes: () => number; readonly end: () => void } => {
  const memories: WebAssembly.Memory[] = [];
  const instantiate = WebAssembly.instantiate;
  const watched = async (
    source: BufferSource | WebAssembly.Module,
    imports?: WebAssembly.Imports,
  ): Promise<unknown> => {
    const made: WebAssembly.Instance | WebAssembly.WebAssemblyInstantiatedSource = await instantiate(
      source as BufferSource,
      imports,
    );
    const { exports } = 'instance' in made ? made.instance : (made as unknown as WebAssembly.Instance);
    for (const one of Object.values(exports)) if (one instanceof WebAssembly.Memory) memories.push(one);
    return made;
  };
  WebAssembly.instantiate = watched as typeof WebAssembly.instantiate;
  return {
    bytes: () => {
      if (memories.length === 0) throw new Error('no WebAssembly memory was made: nothing is measured');
      return memories.reduce((sum, { buffer }) => sum + buffer.byteLength, 0);
    },
    end: () => {
      WebAssembly.instantiate = instantiate;
    },
  };
};
