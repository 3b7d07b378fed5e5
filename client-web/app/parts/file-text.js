/** The text of a file that a person chose. The server is sent the bytes and says itself what it cannot read; this is for the page alone. */

/** The text of UTF-8; null where some byte is none, so that no page writes what it could not read. */
export function utf8(bytes) {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch { return null; }
}

/** The text as the server reads notes: UTF-16 by its mark, else UTF-8 with U+FFFD for what is none. */
export function tolerant(bytes) {
  const [first, second] = new Uint8Array(bytes);
  const form = first === 0xFF && second === 0xFE ? 'utf-16le' : first === 0xFE && second === 0xFF ? 'utf-16be' : 'utf-8';
  return new TextDecoder(form).decode(bytes);
}
