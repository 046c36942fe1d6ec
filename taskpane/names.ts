export { freeName } from "../src/sheets/free-name";
