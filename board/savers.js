// SPDX-License-Identifier: GPL-3.0-or-later
// Ways to save, best first. Each says whether it can save here, and what truly happened.

/**
 * What is saved with one press of Save is what the first saver that can does; when it fails, the next one
 * is asked. The words `save` resolves to end no sentence and carry no time: "harbour.json was written".
 * They must be true: the page repeats them. A person's own "no" is thrown as an AbortError.
 * @typedef {object} Saver
 * @property {number} rank low ones are asked first
 * @property {() => boolean} can
 * @property {(name: string, bytes: Uint8Array<ArrayBuffer>) => Promise<Saved>} save
 * @property {() => void} [forget] the next save asks again where to
 *
 * @typedef {object} Saved
 * @property {string} name of the file, as the coach will find it
 * @property {string} words
 */

/** @typedef {{name: string, createWritable: () => Promise<{write: (bytes: Uint8Array) => Promise<void>,
 *   close: () => Promise<void>}>, getFile: () => Promise<File>}} Handle */
/** @typedef {(options: object) => Promise<Handle>} Picker */

/** @returns {Picker | undefined} */
const picker = () => Reflect.get(globalThis, 'showSaveFilePicker');

/**
 * A file the coach chooses, written whole or not at all by the browser, then looked at again. It is asked
 * for once; later saves go to the same file.
 * @returns {Saver}
 */
export function filePicker() {
  /** @type {Handle | null} */
  let handle = null;
  return {
    rank: 10,
    can: () => typeof picker() === 'function',
    async save(name, bytes) {
      handle ??= await /** @type {Picker} */ (picker())({
        suggestedName: name,
        types: [{ description: 'Breakwater scheme', accept: { 'application/json': ['.json'] } }],
      });
      const to = handle;
      handle = null; // asked for again unless all goes well
      const stream = await to.createWritable();
      await stream.write(bytes);
      await stream.close();
      const size = (await to.getFile()).size;
      if (size !== bytes.length) throw new Error(`${to.name} has ${size} bytes instead of ${bytes.length}`);
      handle = to;
      return { name: to.name, words: `${to.name} was written` };
    },
    forget() { handle = null; },
  };
}

/** Gives bytes to the browser's downloads. @param {Blob} blob @param {string} name */
export function download(blob, name) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60000);
}

/** Everywhere; where the file ends the page cannot know. @returns {Saver} */
export function downloads() {
  return {
    rank: 30,
    can: () => true,
    async save(name, bytes) {
      download(new Blob([bytes], { type: 'application/json' }), name);
      return { name, words: `${name} was handed to the browser's downloads` };
    },
  };
}
