import fc from 'fast-check';
import { expect, test } from 'vitest';
import { FrameReader } from '#persistence/embedded/wire/frame-reader.js';

const startup = Buffer.from([0, 0, 0, 12, 0, 3, 0, 0, 97, 0, 98, 0]);
const sslRequest = Buffer.from([0, 0, 0, 8, 4, 210, 22, 47]);

/** A typed message as the protocol has it: letter, length of the rest with itself, body. */
function typed(type: string, body: Uint8Array): Buffer {
  const header = Buffer.alloc(5);
  header.write(type);
  header.writeUInt32BE(4 + body.length, 1);
  return Buffer.concat([header, body]);
}

const messages = fc.array(
  fc.record({ type: fc.constantFrom('Q', 'P', 'B', 'S'), body: fc.uint8Array({ maxLength: 40 }) }),
  { maxLength: 8 },
);

test('however the bytes are cut, the same messages come out whole', () => {
  fc.assert(
    fc.property(messages, fc.array(fc.nat(30)), (sent, cuts) => {
      const frames = sent.map(({ type, body }) => typed(type, body));
      const bytes = Buffer.concat([sslRequest, startup, ...frames]);
      const reader = new FrameReader();
      const got = cutUp(bytes, cuts).flatMap((chunk) => reader.read(chunk));
      expect(got.map(({ type }) => type)).toEqual([
        'encryption-request',
        'startup',
        ...sent.map(({ type }) => type),
      ]);
      expect(Buffer.concat(got.map((frame) => frame.bytes))).toEqual(bytes);
    }),
  );
});

test('bytes that are no PostgreSQL are refused', () => {
  expect(() => new FrameReader().read(Buffer.from('GET / HTTP/1.1\r\n'))).toThrow('no PostgreSQL');
});

function cutUp(bytes: Buffer, cuts: readonly number[]): Buffer[] {
  const chunks: Buffer[] = [];
  let at = 0;
  for (const cut of cuts) {
    chunks.push(bytes.subarray(at, at + cut));
    at += cut;
  }
  return [...chunks, bytes.subarray(at)].filter((chunk) => chunk.length > 0);
}
