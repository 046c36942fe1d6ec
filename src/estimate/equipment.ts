import { fields } from "./fields";
import { type PriceKind } from "./prices";

/** The lines of what comes for the job and goes again, each counted by the field of its key: moves of the crew, and days of machines. */
export const equipmentKeys = fields.filter(({ section }) => section === "equipment").map(({ key }) => key);

/** What such a line asks the prices for: a machine by the day. */
export const equipmentItem = (key: string) => (key === "mobilization" ? key : `${key}_day`) as PriceKind;
