import { HostError, type WorkbookHost } from "../src/hosts/host";
import { type Command } from "./command";
import { type Controller } from "./controller";
import { layoutHindrance } from "./layout-hindrance";
import { messages } from "./messages";

/** Writes the layout sheet of the estimate in the fields, figured from its sheet as it stands now. Loaded when asked for. */
export const layoutCommand = (panel: Controller, host: WorkbookHost): Command => ({
  label: messages.writeLayout,
  async run() {
    const source = panel.state.source && (await panel.present());
    const why = layoutHindrance(panel.state, panel.figured);
    if (!source || why) throw new HostError(why);
    const [{ newLayout }, { siteOf }] = await Promise.all([import("./new-layout"), import("./layout-site")]);
    const { refusal } = siteOf(source.job, panel.figured.result!.made.pen);
    if (refusal) throw new HostError(refusal);
    const { name, plan } = newLayout(await host.look(), source, panel.figured.result!);
    await host.write([plan]);
    panel.see(await host.look());
    return messages.layoutWritten(name);
  },
});
