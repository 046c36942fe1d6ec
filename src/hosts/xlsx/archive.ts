import JSZip from "jszip";
import { refusals } from "./messages";

const MEGABYTE = 2 ** 20;
/** The most that a file may hold once unpacked, in MB, and in entries. */
export const LARGEST_WORKBOOK = 32;
const MOST_ENTRIES = 5000;

/** The parts of a workbook's file: their names, and the text of those that were asked for. */
export interface Archive {
  names: string[];
  text(name: string): string | undefined;
}

/**
 * Unpacks the parts of an .xlsx file that `wanted` picks. Counts what comes out and stops where it is more than
 * `largest` MB, whatever sizes the file states. Throws a HostError where the bytes are no such file.
 */
export async function unpack(
  bytes: Uint8Array,
  wanted: (name: string) => boolean,
  largest = LARGEST_WORKBOOK,
): Promise<Archive> {
  if (bytes[0] === 0xd0 && bytes[1] === 0xcf) throw refusals.locked();
  if (bytes.length > largest * MEGABYTE) throw refusals.tooLarge(largest);
  const zip = await JSZip.loadAsync(bytes).catch(() => {
    throw bytes[0] === 0x50 && bytes[1] === 0x4b ? refusals.damaged() : refusals.notWorkbook();
  });
  const files = Object.values(zip.files).filter(({ dir }) => !dir);
  if (files.length > MOST_ENTRIES) throw refusals.tooLarge(largest);
  const texts = new Map<string, string>();
  let room = largest * MEGABYTE;
  for (const file of files) {
    const name = file.name.replace(/^\/+/, "");
    if (!wanted(name)) continue;
    const part = await inflate(file, room, largest);
    room -= part.length;
    texts.set(name, decode(part));
  }
  return { names: files.map(({ name }) => name.replace(/^\/+/, "")), text: (name) => texts.get(name) };
}

/** The bytes of one part, or a refusal of what is over `largest` MB as soon as there are more than `room`. */
function inflate(file: JSZip.JSZipObject, room: number, largest: number): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    let size = 0;
    const stream = (file as unknown as Streaming).internalStream("uint8array");
    stream.on("data", (chunk) => {
      size += chunk.length;
      if (size <= room) return chunks.push(chunk);
      stream.pause();
      return reject(refusals.tooLarge(largest));
    });
    stream.on("error", () => reject(refusals.damaged()));
    stream.on("end", () => {
      const whole = new Uint8Array(size);
      let at = 0;
      for (const chunk of chunks) {
        whole.set(chunk, at);
        at += chunk.length;
      }
      resolve(whole);
    });
    stream.resume();
  });
}

/** The zip library's stream, which its type declarations leave out. */
interface Streaming {
  internalStream(type: "uint8array"): {
    on(event: "data", then: (chunk: Uint8Array) => void): void;
    on(event: "error" | "end", then: () => void): void;
    pause(): void;
    resume(): void;
  };
}

function decode(part: Uint8Array): string {
  const wide =
    part[0] === 0xff && part[1] === 0xfe ? "utf-16le" : part[0] === 0xfe && part[1] === 0xff && "utf-16be";
  return new TextDecoder(wide || "utf-8").decode(part);
}
