import { BooleanNumber } from "@univerjs/core";
import {
  ArrayValueObject,
  BaseFunction,
  BooleanValueObject,
  ErrorValueObject,
  FunctionType,
  NumberValueObject,
  StringValueObject,
  type BaseValueObject,
  type ErrorType,
  type IFunctionInfo,
} from "@univerjs/preset-sheets-core";
import { isError, type Cell, type CellError } from "../../units/cell";
import { type PenFunction } from "../../sheets/evaluate";
import { type Value } from "../../sheets/value";
import { type CellMessages } from "./cell-messages";
import { type FunctionMetadata } from "./functions-bundle";

/** The functions as the grid's engine takes them, each a class of its own under the name PEN.<ID>. */
export function penExecutors(
  metadata: FunctionMetadata[],
  pen: (name: string) => PenFunction,
  messages: CellMessages,
): [new (name: string) => BaseFunction, string][] {
  return metadata.map(({ id }) => [executor(pen(id), messages), `PEN.${id}`]);
}

/** What the grid shows of the functions while a formula is typed. */
export function penHelp(metadata: FunctionMetadata[]): IFunctionInfo[] {
  return metadata.map(({ id, description = "", parameters }) => ({
    functionName: `PEN.${id}`,
    functionType: FunctionType.User,
    description,
    abstract: description,
    functionParameter: parameters.map(({ name, description: detail = "", optional }) => ({
      name,
      detail,
      example: name,
      require: optional ? BooleanNumber.FALSE : BooleanNumber.TRUE,
      repeat: BooleanNumber.FALSE,
    })),
  }));
}

/**
 * An exception would stop the engine; a PenFunction throws none. The engine's own way for functions from outside
 * reads texts such as 50' as numbers: hence this class, which hands texts over as texts.
 */
function executor(work: PenFunction, messages: CellMessages) {
  return class extends BaseFunction {
    override isArgumentsIgnoreNumberPattern() {
      return true;
    }

    override calculate(...terms: BaseValueObject[]): BaseValueObject {
      const result = work(...terms.map(received));
      if (!Array.isArray(result)) return this.given(result, 0, 0);
      const calculateValueList = result.map((row, down) =>
        row.map((cell, right) => this.given(cell, down, right)),
      );
      const [rowCount, columnCount] = [result.length, result[0].length];
      if (rowCount === 1 && columnCount === 1) return calculateValueList[0][0];
      return ArrayValueObject.create({
        calculateValueList,
        rowCount,
        columnCount,
        unitId: "",
        sheetId: "",
        row: -1,
        column: -1,
      });
    }

    private given(cell: Cell, down: number, right: number): BaseValueObject {
      const place = { sheet: this.subUnitId ?? "", row: this.row + down, column: this.column + right };
      messages.note(place, String(this.name), isError(cell) ? cell : undefined);
      if (isError(cell)) return ErrorValueObject.create(cell.error as ErrorType);
      if (typeof cell === "number") return NumberValueObject.create(cell);
      if (typeof cell === "boolean") return BooleanValueObject.create(cell);
      return StringValueObject.create(cell ?? "");
    }
  };
}

/** A cell arrives as a rectangle, even a blank one: nothing at all stands for an argument that is left out. */
function received(term: BaseValueObject): Value | undefined {
  if (!term.isArray()) return cellOf(term) ?? undefined;
  return (term as ArrayValueObject).getArrayValue().map((row) => row.map(cellOf));
}

function cellOf(one: BaseValueObject | null | undefined | void): Cell {
  if (!one || one.isNull()) return null;
  if (one.isError()) return { error: String(one.getValue()) as CellError["error"] };
  return one.getValue();
}
