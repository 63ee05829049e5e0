/** Draws icon.png: a flake of snow above a slab whose top has begun to scale. Run: node client/media/icon.mjs */
import { writeFile } from 'node:fs/promises';
import { crc32, deflateSync } from 'node:zlib';

const size = 256;
/** Samples along each side of a pixel. */
const fine = 4;

const sky = [28, 52, 74];
const snow = [244, 248, 250];
const slab = [164, 164, 158];
const stone = [122, 122, 117];
const clear = [0, 0, 0, 0];

await writeFile(new URL('icon.png', import.meta.url), png());

/** Colour at a point of the unit square, red green blue. */
function colourAt(x, y) {
  if (!isInside(x, y)) return clear;
  if (isFlake(x - 0.5, y - 0.37)) return [...snow, 255];
  if (surfaceAt(x) < y) return [...(isStone(x, y) ? stone : slab), 255];
  return [...sky, 255];
}

/** A square with round corners. */
function isInside(x, y) {
  const [dx, dy] = [Math.max(0, Math.abs(x - 0.5) - 0.36), Math.max(0, Math.abs(y - 0.5) - 0.36)];
  return dx * dx + dy * dy < 0.12 * 0.12;
}

/** Six arms, each with two pairs of twigs. */
function isFlake(x, y) {
  for (let arm = 0; arm < 6; arm++) {
    const angle = (arm * Math.PI) / 3 + Math.PI / 6;
    const along = x * Math.cos(angle) + y * Math.sin(angle);
    const aside = Math.abs(y * Math.cos(angle) - x * Math.sin(angle));
    if (0 <= along && along < 0.25 && aside < 0.016) return true;
    const twig = (from, length) => Math.abs(along - from - aside * 0.6) < 0.018 && aside < length;
    if (twig(0.1, 0.06) || twig(0.17, 0.045)) return true;
  }
  return false;
}

/** The top of the slab: sound at the left, in shallow bowls where it has come off. */
function surfaceAt(x) {
  const bowls = [
    [0.47, 0.07, 0.035],
    [0.62, 0.09, 0.05],
    [0.8, 0.08, 0.04],
  ];
  const depths = bowls.map(([middle, half, depth]) => depth * (1 - ((x - middle) / half) ** 2));
  return 0.72 + Math.max(0, ...depths);
}

function isStone(x, y) {
  const stones = [
    [0.22, 0.83, 0.035],
    [0.36, 0.9, 0.028],
    [0.5, 0.84, 0.04],
    [0.66, 0.9, 0.034],
    [0.79, 0.84, 0.03],
  ];
  return stones.some(([cx, cy, radius]) => Math.hypot(x - cx, (y - cy) * 1.25) < radius);
}

function png() {
  const rows = Buffer.alloc(size * (1 + size * 4));
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < size; column++) rows.set(pixel(column, row), row * (1 + size * 4) + 1 + column * 4);
  }
  const header = Buffer.from([0, 0, size >> 8, size & 255, 0, 0, size >> 8, size & 255, 8, 6, 0, 0, 0]);
  const start = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([
    start,
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(rows)),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

/** The mean of the samples, weighted by how much each covers. */
function pixel(column, row) {
  const sum = [0, 0, 0, 0];
  for (let part = 0; part < fine * fine; part++) {
    const [dx, dy] = [(part % fine) + 0.5, Math.floor(part / fine) + 0.5];
    const [red, green, blue, cover] = colourAt((column + dx / fine) / size, (row + dy / fine) / size);
    [red, green, blue].forEach((value, index) => {
      sum[index] += value * cover;
    });
    sum[3] += cover;
  }
  const [red, green, blue, cover] = sum;
  return [red, green, blue]
    .map((value) => (cover === 0 ? 0 : Math.round(value / cover)))
    .concat(Math.round(cover / fine ** 2));
}

function chunk(name, data) {
  const body = Buffer.concat([Buffer.from(name, 'latin1'), data]);
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  sum.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, sum]);
}
