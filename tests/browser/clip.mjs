// Makes a film: in each picture its number, as bars to be read by a program and as a number to be
// read by people. Chromium encodes the pictures; the file around them is written here, so that every
// picture stands exactly where it should and the file says how long it is.

/** Pictures a second. */
export const FPS = 30;
/** Bars of a picture's number, the lowest bit first. */
const BITS = 10;
const [WIDTH, HEIGHT] = [320, 180];

/** A WebM film of so many seconds, made in any page of a secure address. */
export async function clip(page, seconds) {
  const pictures = await page.evaluate(
    async ({ count, fps, bits, width, height }) => {
      const canvas = new OffscreenCanvas(width, height);
      const context = canvas.getContext("2d");
      const made = [];
      const encoder = new VideoEncoder({
        output: (chunk) => {
          const bytes = new Uint8Array(chunk.byteLength);
          chunk.copyTo(bytes);
          made.push({ key: chunk.type === "key", bytes: btoa(String.fromCharCode(...bytes)) });
        },
        error: (reason) => {
          throw reason;
        },
      });
      encoder.configure({ codec: "vp8", width, height, bitrate: 400_000, latencyMode: "realtime" });
      for (let n = 0; n < count; n += 1) {
        context.fillStyle = "#46506a";
        context.fillRect(0, 0, width, height);
        context.font = "bold 72px sans-serif";
        context.fillStyle = "#e8e4d8";
        context.fillText(String(n), 100, 90);
        context.fillRect((n / count) * width, 100, 6, 20);
        for (let bit = 0; bit < bits; bit += 1) {
          context.fillStyle = n & (1 << bit) ? "#fff" : "#000";
          context.fillRect((bit * width) / bits, height - 40, width / bits, 40);
        }
        const frame = new VideoFrame(canvas, { timestamp: Math.round((n * 1e6) / fps) });
        encoder.encode(frame, { keyFrame: n % 15 === 0 });
        frame.close();
      }
      await encoder.flush();
      return made;
    },
    { count: Math.round(seconds * FPS), fps: FPS, bits: BITS, width: WIDTH, height: HEIGHT },
  );
  return film(pictures.map(({ key, bytes }) => ({ key, bytes: Buffer.from(bytes, "base64") })));
}

/** The number of the picture that a video shows; in the page. */
export function pictureOf(video) {
  return video.evaluate((element, bits) => {
    const canvas = new OffscreenCanvas(element.videoWidth, element.videoHeight);
    const context = canvas.getContext("2d", { willReadFrequently: true });
    context.drawImage(element, 0, 0);
    const { width, height } = canvas;
    let number = 0;
    for (let bit = 0; bit < bits; bit += 1) {
      const x = Math.round(((bit + 0.5) * width) / bits);
      const [red] = context.getImageData(x, height - 20, 1, 1).data;
      if (red > 128) number |= 1 << bit;
    }
    return number;
  }, BITS);
}

// What the file is made of: elements by the WebM Container Guidelines, their names by the Matroska
// specification (RFC 9559). Each is a name, a length in eight bytes, and what is in it.
const of = (name, ...parts) => {
  const body = Buffer.concat(parts);
  const length = Buffer.alloc(8);
  length.writeBigUInt64BE(BigInt(body.length));
  length[0] = 1;
  return Buffer.concat([Buffer.from(name, "hex"), length, body]);
};
const number = (name, value) => {
  const bytes = Buffer.alloc(4);
  bytes.writeUInt32BE(value);
  return of(name, bytes);
};
const real = (name, value) => {
  const bytes = Buffer.alloc(8);
  bytes.writeDoubleBE(value);
  return of(name, bytes);
};
const text = (name, value) => of(name, Buffer.from(value));

const HEADER = of(
  "1a45dfa3",
  number("4286", 1),
  number("42f7", 1),
  number("42f2", 4),
  number("42f3", 8),
  text("4282", "webm"),
  number("4287", 2),
  number("4285", 2),
);

function film(pictures) {
  const at = (n) => Math.round((n * 1000) / FPS);
  const info = of(
    "1549a966",
    number("2ad7b1", 1_000_000),
    real("4489", at(pictures.length)),
    text("4d80", "test"),
    text("5741", "test"),
  );
  const size = of("e0", number("b0", WIDTH), number("ba", HEIGHT));
  const track = [number("d7", 1), number("73c5", 1), number("83", 1), text("86", "V_VP8"), size];
  const tracks = of("1654ae6b", of("ae", ...track));
  const starts = pictures.flatMap(({ key }, n) => (key ? [n] : []));
  const clusters = starts.map((start, i) => {
    const blocks = pictures.slice(start, starts[i + 1]).map(({ key, bytes }, k) => {
      const head = Buffer.alloc(4);
      head[0] = 0x81;
      head.writeInt16BE(at(start + k) - at(start), 1);
      head[3] = key ? 0x80 : 0;
      return of("a3", head, bytes);
    });
    return of("1f43b675", number("e7", at(start)), ...blocks);
  });
  // Where each cluster lies depends on how long this is, which does not depend on where they lie.
  const cues = (first) => {
    let lies = first;
    const points = clusters.map((cluster, i) => {
      const place = of("b7", number("f7", 1), number("f1", lies));
      lies += cluster.length;
      return of("bb", number("b3", at(starts[i])), place);
    });
    return of("1c53bb6b", ...points);
  };
  const before = info.length + tracks.length;
  const index = cues(before + cues(0).length);
  return Buffer.concat([HEADER, of("18538067", info, tracks, index, ...clusters)]);
}
