import { repeatedRows, type PrintSetUp } from "../../sheets/plan";
import { areaAddress } from "./areas";

/** Sets how a new sheet prints. */
export function setUpPage(sheet: Excel.Worksheet, print: PrintSetUp): void {
  const page = sheet.pageLayout;
  // Half an inch all round, and the footer inside it.
  Object.assign(page, { leftMargin: 36, rightMargin: 36, topMargin: 36, bottomMargin: 43, footerMargin: 22 });
  page.centerHorizontally = true;
  page.orientation = print.landscape ? "Landscape" : "Portrait";
  page.zoom = {
    horizontalFitToPages: print.pages.wide,
    ...(print.pages.tall > 0 && { verticalFitToPages: print.pages.tall }),
  };
  page.setPrintArea(areaAddress(print.area));
  const repeated = repeatedRows(print);
  if (repeated) page.setPrintTitleRows(repeated.map((row) => `$${row}`).join(":"));
  const foot = page.headersFooters.defaultForAllPages;
  // In a footer an ampersand begins a code; two stand for one.
  foot.leftFooter = `&8 ${print.footer.replace(/&/g, "&&")}`;
  foot.rightFooter = "&8 &P / &N";
}
