import { HostError } from "../host";
import { messages } from "./messages";

/** Refuses names that Excel does not take for new sheets. Whether one is taken already, Excel says at the write. */
export function checkSheetNames(names: string[]): void {
  const seen = new Set<string>();
  for (const name of names) {
    if (name.trim() === "") throw new HostError(messages.nameEmpty);
    if (name.length > 31) throw new HostError(messages.nameLong(name));
    if (/[:\\/?*[\]]|^'|'$/.test(name)) throw new HostError(messages.nameCharacters(name));
    if (/^history$/i.test(name)) throw new HostError(messages.nameReserved(name));
    if (seen.has(name.toLowerCase())) throw new HostError(messages.nameTwice(name));
    seen.add(name.toLowerCase());
  }
}
