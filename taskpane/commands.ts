import { type WorkbookHost } from "../src/hosts/host";
import { type Command } from "./command";
import { messages } from "./messages";
import { freeName } from "./names";

/** The commands that a host can do beside the common part, in the order of their buttons. */
export const commandsOf = (host: WorkbookHost): Command[] => [
  ...(host.can.selfCheck ? [selfCheck(host)] : []),
];

/** Writes a sheet that checks every function in this workbook. Its checks are loaded when asked for. */
const selfCheck = (host: WorkbookHost): Command => ({
  label: messages.selfCheck,
  async run() {
    const [{ allChecks }, { sheetNames }] = await Promise.all([import("./self-check"), host.look()]);
    const name = freeName(messages.selfCheckSheet, sheetNames);
    await host.write([allChecks(name)]);
    return messages.selfChecked(name);
  },
});
