import type { FactoryFunctionMap, Unit } from "mathjs";
import {
  addDependencies,
  create,
  divideDependencies,
  multiplyDependencies,
  powDependencies,
  subtractDependencies,
  unitDependencies,
} from "mathjs";

/** A bare number or a number with a unit, as the reader combines them. */
export type Quantity = number | Unit;

/** The few operations the quantity fields need; each throws when the units do not go together. */
export interface UnitMath {
  of(value: number, unit: string): Quantity;
  add(a: Quantity, b: Quantity): Quantity;
  subtract(a: Quantity, b: Quantity): Quantity;
  multiply(a: Quantity, b: Quantity): Quantity;
  divide(a: Quantity, b: Quantity): Quantity;
  pow(a: Quantity, b: Quantity): Quantity;
}

let made: UnitMath | null = null;

/**
 * Our own instance of the unit library, with units and the four operations only: no expression parser, no functions a
 * text could call, nothing that needs code generation. Made at the first quantity that is read, not at page load.
 */
export function unitMath(): UnitMath {
  if (made) return made;
  const parts = {
    unitDependencies,
    addDependencies,
    subtractDependencies,
    multiplyDependencies,
    divideDependencies,
    powDependencies,
  };
  const m = create(parts as FactoryFunctionMap);
  made = {
    of: (value, unit) => m.unit!(value, unit),
    add: (a, b) => m.add!(a as Unit, b as Unit) as Quantity,
    subtract: (a, b) => m.subtract!(a as Unit, b as Unit) as Quantity,
    multiply: (a, b) => m.multiply!(a, b) as Quantity,
    divide: (a, b) => m.divide!(a, b) as Quantity,
    pow: (a, b) => m.pow!(a as Unit, b as number) as Quantity,
  };
  return made;
}
