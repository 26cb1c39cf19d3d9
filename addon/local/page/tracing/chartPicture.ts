// A picture of a chart, opened from a file of this machine: what is shown, what is traced, and a hash to know it by again.
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { greyFromRgba, type GreyPicture } from '../../../tracing/greyPicture';

export interface ChartPicture {
  readonly name: string;
  /** SHA-256 of the file, in hex. */
  readonly hash: string;
  readonly bytes: Uint8Array;
  readonly type: string;
  readonly image: HTMLCanvasElement;
  readonly grey: GreyPicture;
}

/** Pixels of the longer side, and bytes of the file, beyond which a phone runs out of memory. A larger picture is drawn smaller. */
const [largestSide, largestFile] = [4096, 60_000_000];

export const pictureTypes = ['image/png', 'image/jpeg'];

/** By the file's first bytes, whatever it is called. */
function typeOf(bytes: Uint8Array): string {
  const begins = (...signs: number[]): boolean => signs.every((sign, index) => bytes[index] === sign);
  if (begins(0x89, 0x50, 0x4e, 0x47)) return 'image/png';
  if (begins(0xff, 0xd8, 0xff)) return 'image/jpeg';
  if (begins(0x25, 0x50, 0x44, 0x46))
    throw new Error('This is a PDF file, which is not opened here. Save the page as a picture first (PNG), for example as a screenshot.');
  throw new Error('This is neither a PNG nor a JPEG picture. Save the page as a picture first.');
}

export async function openPicture(name: string, bytes: Uint8Array): Promise<ChartPicture> {
  if (bytes.length > largestFile) throw new Error(`The picture has ${Math.round(bytes.length / 1e6)} MB; ${largestFile / 1e6} MB can be opened.`);
  const type = typeOf(bytes);
  const bitmap = await createImageBitmap(new Blob([bytes as Uint8Array<ArrayBuffer>], { type })).catch(() => {
    throw new Error('The picture could not be read: the file is damaged or cut off.');
  });
  const scale = Math.min(1, largestSide / Math.max(bitmap.width, bitmap.height));
  const image = document.createElement('canvas');
  [image.width, image.height] = [Math.round(bitmap.width * scale), Math.round(bitmap.height * scale)];
  const context = image.getContext('2d', { willReadFrequently: true });
  if (context === null || image.width < 50 || image.height < 50) throw new Error('The picture is too small to be traced.');
  context.imageSmoothingQuality = 'high';
  context.drawImage(bitmap, 0, 0, image.width, image.height);
  bitmap.close();
  const { data } = context.getImageData(0, 0, image.width, image.height);
  return { name, hash: bytesToHex(sha256(bytes)), bytes, type, image, grey: greyFromRgba(data, image.width, image.height) };
}
