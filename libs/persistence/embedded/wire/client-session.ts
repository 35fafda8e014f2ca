import type { Socket } from 'node:net';
import { FrameReader, type Frame } from './frame-reader.js';
import type { Turns } from './turns.js';

/** The one backend that all clients share. */
export interface Backend {
  /** Carries out one message and answers with the backend's messages. */
  execProtocolRaw(message: Uint8Array): Promise<Uint8Array>;
}

export interface SessionOptions {
  readonly backend: Backend;
  readonly turns: Turns;
  /** Milliseconds that a client may hold the backend without saying anything. */
  readonly longestSilence: number;
  /** The backend itself broke; nothing can be done with it any more. */
  readonly onBroken: (error: unknown) => void;
}

const sync = Uint8Array.of(0x53, 0, 0, 0, 4);
const rollback = Buffer.concat([Buffer.of(0x51, 0, 0, 0, 13), Buffer.from('ROLLBACK\0')]);

/** After these the backend says whether it is ready, and in a transaction or not. */
const endsTurn = new Set(['startup', 'Q', 'S', 'F']);

/**
 * One client's connection. The backend keeps the state of a conversation (a statement being prepared,
 * an error after which it skips everything up to Sync, a transaction), so a client holds it from its
 * first message until it is ready again outside a transaction.
 */
export class ClientSession {
  readonly #reader = new FrameReader();
  #work = Promise.resolve();
  #holds = false;
  /** The backend has heard something since it last said that it is ready. */
  #isMidway = false;
  #isClosed = false;
  #silence: NodeJS.Timeout | undefined;

  constructor(
    private readonly socket: Socket,
    private readonly options: SessionOptions,
  ) {
    socket.setNoDelay(true);
    socket.on('error', () => socket.destroy());
    socket.on('data', (chunk) => this.#receive(chunk));
    socket.on('close', () => {
      this.#isClosed = true;
      this.#then(() => this.#leave());
    });
  }

  #receive(chunk: Buffer): void {
    clearTimeout(this.#silence);
    try {
      for (const frame of this.#reader.read(chunk)) this.#then(() => this.#handle(frame));
    } catch {
      this.socket.destroy();
    }
  }

  /** Everything of one client happens in its order. */
  #then(act: () => Promise<void>): void {
    this.#work = this.#work.then(act).catch(this.options.onBroken);
  }

  async #handle(frame: Frame): Promise<void> {
    if (this.#isClosed) return;
    if (frame.type === 'encryption-request') return this.#write(Buffer.from('N'));
    if (frame.type === 'X' || frame.type === 'cancel-request') return this.#end();
    if (!this.#holds) await this.options.turns.take();
    this.#holds = true;
    this.#isMidway = true;
    const answer = await this.options.backend.execProtocolRaw(frame.bytes);
    if (endsTurn.has(frame.type)) this.#passOnWhenReady(answer);
    this.#write(answer);
  }

  #passOnWhenReady(answer: Uint8Array): void {
    const status = readyStatus(answer);
    if (status !== null) this.#isMidway = false;
    if (status === 'I') this.#release();
    else this.#silence = setTimeout(() => this.socket.destroy(), this.options.longestSilence);
  }

  #write(bytes: Uint8Array): void {
    if (bytes.length > 0 && this.socket.writable) this.socket.write(bytes);
  }

  #end(): void {
    this.socket.end();
  }

  /** Brings the backend out of whatever the client left it in. */
  async #leave(): Promise<void> {
    clearTimeout(this.#silence);
    if (!this.#holds) return;
    if (this.#isMidway) await this.options.backend.execProtocolRaw(sync);
    await this.options.backend.execProtocolRaw(rollback);
    this.#release();
  }

  #release(): void {
    this.#holds = false;
    this.options.turns.release();
  }
}

/** The status letter of a final ReadyForQuery: I outside, T in, E in a failed transaction. */
function readyStatus(answer: Uint8Array): string | null {
  const at = answer.length - 6;
  if (at < 0 || answer[at] !== 0x5a || answer[at + 4] !== 5) return null;
  return String.fromCharCode(answer[at + 5] ?? 0);
}
