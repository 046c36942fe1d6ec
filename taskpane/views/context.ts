import { type WorkbookHost } from "../../src/hosts/host";
import { type SlotList } from "../../src/estimate/fields";
import { type Command } from "../command";
import { type Controller } from "../controller";
import { type SectionState } from "../sections";

/** What the page itself remembers: places opened but still blank, and the piece of the plan that is named. */
export interface PageState {
  opened: Record<SlotList, number>;
  /** The sections that were opened, by id. */
  sections: Record<string, SectionState | undefined>;
  /** Those of them that stand open now. */
  open?: Record<string, boolean | undefined>;
  piece?: number;
}

/** What every view is given. */
export interface Context {
  panel: Controller;
  /** The workbook, for commands that only one section has. */
  host: WorkbookHost;
  page: PageState;
  commands: readonly Command[];
  /** Writes the layout sheet. */
  layout: Command;
  /** Renders again after a change of `page`; then moves the focus to the element of that id. */
  changed(focus?: string): void;
}
