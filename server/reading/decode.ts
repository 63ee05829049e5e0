/** Bytes to text: byte order marks, UTF-8, UTF-16, and windows-1252 sequence by sequence, so that one bad byte spoils nothing else. */

/** Both platforms have it; the reader is compiled for neither. */
declare const TextDecoder: new (
  label: string,
  options?: { readonly fatal?: boolean },
) => { decode(bytes: Uint8Array): string };

export interface Decoded {
  readonly text: string;
  readonly encoding: 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';
  /** Characters that could not be read and stand as U+FFFD. */
  readonly lost: number;
  /** Not text at all; `text` is empty. */
  readonly binary: boolean;
}

export function decode(bytes: Uint8Array): Decoded {
  const wide = wideEncoding(bytes);
  if (wide) return finished(new TextDecoder(wide.name).decode(bytes.subarray(wide.skip)), wide.name);
  if (isBinary(bytes)) return { text: '', encoding: 'utf-8', lost: 0, binary: true };
  const body = startsWith(bytes, [0xef, 0xbb, 0xbf]) ? bytes.subarray(3) : bytes;
  try {
    return finished(new TextDecoder('utf-8', { fatal: true }).decode(body), 'utf-8');
  } catch {
    return finished(legacy(body), 'windows-1252');
  }
}

function finished(text: string, encoding: Decoded['encoding']): Decoded {
  let lost = 0;
  for (const character of text) if (character === '\ufffd') lost++;
  return { text, encoding, lost, binary: false };
}

function wideEncoding(
  bytes: Uint8Array,
): { readonly name: 'utf-16le' | 'utf-16be'; readonly skip: number } | undefined {
  if (startsWith(bytes, [0xff, 0xfe])) return { name: 'utf-16le', skip: 2 };
  if (startsWith(bytes, [0xfe, 0xff])) return { name: 'utf-16be', skip: 2 };
  // Latin text in UTF-16 without a mark: every second byte of the opening is zero.
  const opening = bytes.subarray(0, 64 & ~1);
  if (opening.length < 8) return undefined;
  const zeros = [0, 0];
  opening.forEach((byte, at) => {
    if (byte === 0) zeros[at % 2] = (zeros[at % 2] ?? 0) + 1;
  });
  const half = opening.length / 2;
  if (half * 0.8 < (zeros[1] ?? 0) && zeros[0] === 0) return { name: 'utf-16le', skip: 0 };
  if (half * 0.8 < (zeros[0] ?? 0) && zeros[1] === 0) return { name: 'utf-16be', skip: 0 };
  return undefined;
}

/** Archives and PDF by their first bytes; anything with a run of control bytes. */
function isBinary(bytes: Uint8Array): boolean {
  if (startsWith(bytes, [0x50, 0x4b, 0x03, 0x04]) || startsWith(bytes, [0x25, 0x50, 0x44, 0x46])) return true;
  const opening = bytes.subarray(0, 4096);
  let control = 0;
  for (const byte of opening) if (byte < 9 || (13 < byte && byte < 32 && byte !== 27)) control++;
  return opening.length * 0.02 < control;
}

const startsWith = (bytes: Uint8Array, mark: readonly number[]): boolean =>
  mark.every((byte, at) => bytes[at] === byte);

/** Valid UTF-8 sequences are kept; every other byte is read as windows-1252. */
function legacy(bytes: Uint8Array): string {
  const parts: string[] = [];
  let plainFrom = 0;
  const flush = (end: number): void => {
    if (plainFrom < end) parts.push(ansi(bytes.subarray(plainFrom, end)));
  };
  for (let at = 0; at < bytes.length; ) {
    const length = sequenceLength(bytes[at] as number);
    const sequence = 1 < length ? validSequence(bytes.subarray(at, at + length), length) : undefined;
    if (sequence !== undefined) {
      flush(at);
      parts.push(sequence);
      plainFrom = at + length;
    }
    at += sequence === undefined ? 1 : length;
  }
  flush(bytes.length);
  return parts.join('');
}

/** What windows-1252 has from 0x80 to 0x9f; five bytes are no character. Node 20 reads them as control characters, so the table is ours. */
const dashesAndQuotes = '€\ufffd‚ƒ„…†‡ˆ‰Š‹Œ\ufffdŽ\ufffd\ufffd‘’“”•–—˜™š›œ\ufffdžŸ';

function ansi(bytes: Uint8Array): string {
  let text = '';
  for (const byte of bytes)
    text += byte < 0x80 || 0x9f < byte ? String.fromCharCode(byte) : dashesAndQuotes[byte - 0x80];
  return text;
}

function sequenceLength(lead: number): number {
  if (0xc2 <= lead && lead <= 0xdf) return 2;
  if (0xe0 <= lead && lead <= 0xef) return 3;
  return 0xf0 <= lead && lead <= 0xf4 ? 4 : 1;
}

const utf8 = new TextDecoder('utf-8', { fatal: true });

function validSequence(sequence: Uint8Array, length: number): string | undefined {
  if (sequence.length !== length || !sequence.subarray(1).every((byte) => (byte & 0xc0) === 0x80)) return undefined;
  try {
    return utf8.decode(sequence);
  } catch {
    return undefined;
  }
}
