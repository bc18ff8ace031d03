// SPDX-License-Identifier: GPL-3.0-or-later
// What tools/build-board.mjs puts into the page: bytes, and one text.
declare module 'embedded:core' {
  const bytes: Uint8Array<ArrayBuffer>;
  export default bytes;
}
declare module 'embedded:regular' {
  const bytes: Uint8Array<ArrayBuffer>;
  export default bytes;
}
declare module 'embedded:bold' {
  const bytes: Uint8Array<ArrayBuffer>;
  export default bytes;
}
declare module 'embedded:demo' {
  const text: string;
  export default text;
}
