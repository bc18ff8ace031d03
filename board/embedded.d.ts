// SPDX-License-Identifier: GPL-3.0-or-later
// What tools/build-board.mjs puts into the page, or beside it: bytes, one text, and a worker.
declare module 'embedded:core' {
  const load: () => Promise<Uint8Array<ArrayBuffer>>;
  export default load;
}
declare module 'embedded:regular' {
  const load: () => Promise<Uint8Array<ArrayBuffer>>;
  export default load;
}
declare module 'embedded:bold' {
  const load: () => Promise<Uint8Array<ArrayBuffer>>;
  export default load;
}
declare module 'embedded:demo' {
  const load: () => Promise<string>;
  export default load;
}
declare module 'embedded:worker' {
  const start: () => Promise<Worker>;
  export default start;
}
