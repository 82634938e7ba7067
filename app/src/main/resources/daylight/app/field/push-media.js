// Pictures and voice notes: their SHA-256, and sending them in pieces that go on where a line was cut.

import { NotSent, headers } from './enter.js';

const PIECE = 512 * 1024;
const K = [];
const H = [];

// The constants of FIPS 180-4: fractions of the roots of the first primes.
for (let n = 2; K.length < 64; n++) {
  let prime = true;
  for (let d = 2; d * d <= n; d++) {
    prime = prime && n % d !== 0;
  }
  if (prime) {
    const part = (root) => ((root - Math.floor(root)) * 2 ** 32) | 0;
    if (H.length < 8) {
      H.push(part(Math.sqrt(n)));
    }
    K.push(part(Math.cbrt(n)));
  }
}

function block(h, view, at) {
  const w = new Int32Array(64);
  const turn = (x, n) => (x >>> n) | (x << (32 - n));
  for (let i = 0; i < 16; i++) {
    w[i] = view.getInt32(at + 4 * i);
  }
  for (let i = 16; i < 64; i++) {
    const s0 = turn(w[i - 15], 7) ^ turn(w[i - 15], 18) ^ (w[i - 15] >>> 3);
    const s1 = turn(w[i - 2], 17) ^ turn(w[i - 2], 19) ^ (w[i - 2] >>> 10);
    w[i] = w[i - 16] + s0 + w[i - 7] + s1;
  }
  let [a, b, c, d, e, f, g, z] = h;
  for (let i = 0; i < 64; i++) {
    const t1 = (z + (turn(e, 6) ^ turn(e, 11) ^ turn(e, 25)) + ((e & f) ^ (~e & g)) + K[i] + w[i]) | 0;
    const t2 = ((turn(a, 2) ^ turn(a, 13) ^ turn(a, 22)) + ((a & b) ^ (a & c) ^ (b & c))) | 0;
    [a, b, c, d, e, f, g, z] = [(t1 + t2) | 0, a, b, c, (d + t1) | 0, e, f, g];
  }
  [a, b, c, d, e, f, g, z].forEach((x, i) => {
    h[i] = (h[i] + x) | 0;
  });
}

/** SHA-256 by hand (FIPS 180-4): at a plain http address browsers lend none. */
export function sha256(bytes) {
  const padded = new Uint8Array(Math.ceil((bytes.length + 9) / 64) * 64);
  padded.set(bytes);
  padded[bytes.length] = 0x80;
  const view = new DataView(padded.buffer);
  view.setUint32(padded.length - 8, Math.floor(bytes.length / 2 ** 29));
  view.setUint32(padded.length - 4, (bytes.length * 8) >>> 0);
  const h = [...H];
  for (let at = 0; at < padded.length; at += 64) {
    block(h, view, at);
  }
  return h.map((x) => (x >>> 0).toString(16).padStart(8, '0')).join('');
}

async function piece(to, item, from, body) {
  const where = `/site/${to}/media/${item.sha}?name=${encodeURIComponent(item.name)}&from=${from}&length=${item.blob.size}`;
  let reply;
  try {
    reply = await fetch(where, {
      method: 'POST',
      headers: headers({ 'Content-Type': 'application/octet-stream' }),
      body,
    });
  } catch (unreached) {
    throw new NotSent(String(unreached.message ?? unreached), true);
  }
  const told = await reply.json().catch(() => ({}));
  if (!reply.ok) {
    throw new NotSent(told.error ?? String(reply.status), reply.status >= 500);
  }
  return told;
}

/** Sends what is not there yet; returns what became of it. */
export async function upload(to, item) {
  let told = await piece(to, item, 0, new Uint8Array(0));
  while (told.state === 'partly') {
    told = await piece(to, item, told.bytes, item.blob.slice(told.bytes, told.bytes + PIECE));
  }
  return told.state;
}

/** A voice note: begun by the first call, ended by calling what it returns. */
export async function listen() {
  const stream = await navigator.mediaDevices.getUserMedia({ audio: true });
  const recorder = new MediaRecorder(stream);
  const parts = [];
  recorder.ondataavailable = (event) => parts.push(event.data);
  recorder.start();
  return () =>
    new Promise((resolve) => {
      recorder.onstop = () => {
        stream.getTracks().forEach((track) => track.stop());
        resolve(new Blob(parts, { type: recorder.mimeType }));
      };
      recorder.stop();
    });
}

/** The ending of a file of that type. */
export const ending = (type) =>
  ({ 'image/jpeg': 'jpg', 'image/png': 'png', 'audio/webm': 'weba', 'audio/mp4': 'm4a', 'audio/ogg': 'ogg' })[
    type.split(';')[0]
  ];
