import { base64 } from "../../src/hosts/base64";
import { HostError, type WorkbookHost } from "../../src/hosts/host";
import { svgToPng } from "../../src/hosts/svg-to-png";
import { nameErrors, plainCopy, type PlainCopyWish } from "../../src/sheets/plain-copy";
import { dayText } from "../day";
import { functionOf } from "./functions";
import { messages } from "./messages";

const xlsxType = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** Hands a file to the user: as a new workbook where the host opens one, else as a download. */
export type HandOver = (name: string, bytes: Uint8Array) => Promise<void>;

/** Makes a plain copy of chosen sheets and hands it over. Throws a HostError where someone would meet a #NAME? in it. */
export async function makePlainCopy(
  host: WorkbookHost,
  wish: PlainCopyWish,
  handOver: HandOver = handedOver(host),
): Promise<string> {
  if (wish.sheets.length === 0) throw new HostError(messages.chooseSheets);
  const copy = plainCopy(await host.content!(), functionOf, wish);
  const wrong = nameErrors(copy);
  if (wrong.length > 0) throw new HostError(messages.nameErrors(wrong.slice(0, 8).join(", ")));
  const { writeXlsx } = await import("../../src/hosts/xlsx/xlsx");
  const bytes = await writeXlsx(copy, async (svg, width, height) =>
    Uint8Array.from(atob(await svgToPng(svg, width, height)), (sign) => sign.charCodeAt(0)),
  );
  await handOver(`${messages.fileName} ${dayText(new Date())}.xlsx`, bytes);
  const lost = copy.sheets.flatMap((sheet) =>
    (sheet.lost ?? []).map((what) => messages.lost(sheet.name, what)),
  );
  return [messages.copied(copy.sheets.length), ...lost].join(" ");
}

const handedOver =
  (host: WorkbookHost): HandOver =>
  async (name, bytes) => {
    if (host.openCopy) return host.openCopy(base64(bytes));
    const { download } = await import("../workbook-ask");
    download(name, new Blob([bytes as Uint8Array<ArrayBuffer>], { type: xlsxType }));
  };
