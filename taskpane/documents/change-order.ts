import { changesTo } from "../../src/sheets/documents/contract";
import { changeAsked, changeEntries, changeOrderPlan } from "../../src/sheets/documents/change-order";
import { shownNumber } from "../../src/sheets/documents/read";
import { dayText } from "../day";
import { contractBody } from "./contract-body";

/** The change order's part of the panel. Its number is the next one of its bid. */
export const changeOrderBody = () =>
  contractBody({
    title: "Change order",
    write: "Write change order",
    hint: "Once it is signed, type the day into its sheet: it then counts in the contract.",
    numberKey: changeEntries.number.key,
    asks: () => changeAsked,
    start: ({ number }, { sheets }) => {
      const numbers = changesTo(number, sheets).map((one) => shownNumber(one, changeEntries.number.key) ?? 0);
      return {
        [changeEntries.number.key]: Math.max(0, ...numbers) + 1,
        [changeEntries.date.key]: dayText(new Date()),
      };
    },
    plan: changeOrderPlan,
  });
