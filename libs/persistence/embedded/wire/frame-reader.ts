/** One message of a PostgreSQL client. */
export interface Frame {
  /** The message's type letter; the three kinds of first message have none and get a name. */
  readonly type: string;
  /** The whole message, header included. */
  readonly bytes: Uint8Array;
}

const requestCodes: Readonly<Record<number, string>> = {
  80_877_102: 'cancel-request',
  80_877_103: 'encryption-request',
  80_877_104: 'encryption-request',
};

/** Far above the largest document; a longer message means that the bytes are no PostgreSQL. */
const longestMessage = 256 * 1024 * 1024;

/** Cuts a client's bytes into messages. A new connection's first messages carry no type letter. */
export class FrameReader {
  #chunks: Buffer[] = [];
  #size = 0;
  /** Bytes that must be here before it is worth looking again. */
  #needed = 0;
  #isStarted = false;

  /** The messages completed by these bytes. Throws on bytes that are no PostgreSQL. */
  read(chunk: Buffer): Frame[] {
    this.#chunks.push(chunk);
    this.#size += chunk.length;
    const frames: Frame[] = [];
    for (let frame = this.#next(); frame; frame = this.#next()) frames.push(frame);
    return frames;
  }

  #next(): Frame | null {
    if (this.#size < this.#needed) return null;
    const all = this.#chunks.length === 1 ? this.#chunks[0] : Buffer.concat(this.#chunks);
    if (all === undefined) return null;
    this.#chunks = [all];
    const header = this.#isStarted ? 5 : 8;
    if (all.length < header) return this.#wait(header);
    const length = this.#isStarted ? 1 + all.readUInt32BE(1) : all.readUInt32BE(0);
    if (length < header || length > longestMessage) {
      throw new RangeError(`a message of ${length} bytes is no PostgreSQL`);
    }
    if (all.length < length) return this.#wait(length);
    return this.#cut(all, length);
  }

  #wait(needed: number): null {
    this.#needed = needed;
    return null;
  }

  #cut(all: Buffer, length: number): Frame {
    const bytes = all.subarray(0, length);
    const type = this.#isStarted
      ? String.fromCharCode(bytes[0] ?? 0)
      : (requestCodes[bytes.readUInt32BE(4)] ?? 'startup');
    if (type === 'startup') this.#isStarted = true;
    this.#chunks = length < all.length ? [all.subarray(length)] : [];
    this.#size = all.length - length;
    this.#needed = 0;
    return { type, bytes };
  }
}
