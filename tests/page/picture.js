// A photograph as a camera might give it, made here: a vase before a plain wall.

import { deflateSync } from 'node:zlib';

const WIDTH = 800;
const HEIGHT = 600;

/** Half of the vase's width at a height of the picture, in pixels; none above the rim and below the foot. */
function halfWidth(y) {
  if (y < 120 || y > 520) return 0;
  const up = (520 - y) / 400;
  return 60 + 70 * Math.sin(Math.PI * Math.min(1, up / 0.8)) + 20 * up;
}

/** A vase as a PNG file. */
export function vase() {
  const rows = Buffer.alloc(HEIGHT * (1 + WIDTH * 3));
  for (let y = 0; y < HEIGHT; y++) {
    const row = y * (1 + WIDTH * 3) + 1;
    for (let x = 0; x < WIDTH; x++) {
      const clay = Math.abs(x - WIDTH / 2) < halfWidth(y);
      const [r, g, b] = clay ? [122, 76, 54] : [214, 210, 202];
      rows.set([r, g, b], row + x * 3);
    }
  }
  const header = Buffer.alloc(13);
  header.writeUInt32BE(WIDTH, 0);
  header.writeUInt32BE(HEIGHT, 4);
  header.set([8, 2, 0, 0, 0], 8); // eight bits each of red, green and blue
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([signature, chunk('IHDR', header), chunk('IDAT', deflateSync(rows)), chunk('IEND', Buffer.alloc(0))]);
}

function chunk(name, bytes) {
  const body = Buffer.concat([Buffer.from(name, 'latin1'), bytes]);
  const length = Buffer.alloc(4);
  const sum = Buffer.alloc(4);
  length.writeUInt32BE(bytes.length);
  sum.writeUInt32BE(crc(body));
  return Buffer.concat([length, body, sum]);
}

/** The checksum of PNG's chunks (ISO 3309). */
function crc(bytes) {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? (sum >>> 1) ^ 0xedb88320 : sum >>> 1;
  }
  return (sum ^ 0xffffffff) >>> 0;
}
