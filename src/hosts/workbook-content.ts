export * from "../sheets/workbook-content";
