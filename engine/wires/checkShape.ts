import type { Problem } from "../result.ts";

type Kind = "number" | "string" | "object" | "list";

const terminationField = {
  voltage: "volts",
  current: "amperes",
  load: "impedance_ohm",
  short: undefined,
  open: undefined,
} as const;

function kindOf(value: unknown): string {
  if (value === null) return "nothing";
  return Array.isArray(value) ? "list" : typeof value;
}

/**
 * Whether any data at all has the shape of a WireProblem: lists where lists belong, numbers where numbers belong.
 * Values are not judged, unknown fields not minded. An empty list means that every field may be read as its type says.
 */
export function checkShape(candidate: unknown): Problem[] {
  const found: Problem[] = [];
  const is = (value: unknown, kind: Kind, where: string): boolean => {
    const got = kindOf(value);
    if (got === kind) return true;
    found.push({ code: "wrong-type", where, message: `Expected a ${kind} at ${where || "the top"}, not ${got}.` });
    return false;
  };
  const oneOf = (value: unknown, names: readonly string[], code: string, where: string): boolean => {
    if (typeof value === "string" && names.includes(value)) return true;
    const wanted = names.map((n) => `"${n}"`).join(", ");
    found.push({ code, where, message: `${where} is ${shown(value)}, none of ${wanted}.` });
    return false;
  };
  type Fields = Record<string, unknown>;
  const numbers = (of: Fields, at: string, ...names: readonly string[]) => {
    for (const name of names) is(of[name], "number", `${at}.${name}`);
  };
  const optional = (of: Fields, at: string, ...names: readonly string[]) => {
    for (const name of names) if (of[name] !== undefined) is(of[name], "number", `${at}.${name}`);
  };

  if (!is(candidate, "object", "")) return found;
  const problem = candidate as Fields;
  is(problem.frequency_Hz, "number", "frequency_Hz");

  if (is(problem.ground, "object", "ground")) {
    const ground = problem.ground as Fields;
    if (oneOf(ground.kind, ["free-space", "perfect", "soil"], "ground-kind", "ground.kind") && ground.kind === "soil")
      numbers(ground, "ground", "relativePermittivity", "conductivity_SPerM");
  }
  if (problem.soilModel !== undefined) oneOf(problem.soilModel, ["screen", "full-wave"], "soil-model", "soilModel");

  if (problem.screens !== undefined && is(problem.screens, "list", "screens"))
    (problem.screens as unknown[]).forEach((screen, i) => {
      const at = `screens[${i}]`;
      if (is(screen, "object", at)) numbers(screen as Fields, at, "x_m", "y_m", "count", "length_m", "radius_m");
    });

  if (is(problem.wires, "list", "wires"))
    (problem.wires as unknown[]).forEach((wire, i) => {
      const at = `wires[${i}]`;
      if (!is(wire, "object", at)) return;
      const w = wire as Fields;
      is(w.id, "string", `${at}.id`);
      for (const end of ["from_m", "to_m"])
        if (is(w[end], "list", `${at}.${end}`)) {
          const point = w[end] as unknown[];
          if (point.length !== 3 || point.some((x) => typeof x !== "number"))
            found.push({ code: "wire-ends", where: `${at}.${end}`, message: `${at}.${end} is not three numbers.` });
        }
      numbers(w, at, "radius_m");
      optional(w, at, "conductivity_SPerM", "segments");
      if (w.insulation !== undefined && is(w.insulation, "object", `${at}.insulation`))
        numbers(w.insulation as Fields, `${at}.insulation`, "radius_m", "relativePermittivity");
    });

  if (is(problem.ports, "list", "ports"))
    (problem.ports as unknown[]).forEach((port, i) => {
      const at = `ports[${i}]`;
      if (!is(port, "object", at)) return;
      const p = port as Fields;
      is(p.id, "string", `${at}.id`);
      is(p.wire, "string", `${at}.wire`);
      numbers(p, at, "position");
      if (!is(p.termination, "object", `${at}.termination`)) return;
      const t = p.termination as Fields;
      if (!oneOf(t.kind, Object.keys(terminationField), "port-termination", `${at}.termination.kind`)) return;
      const field = terminationField[t.kind as keyof typeof terminationField];
      if (field !== undefined && is(t[field], "object", `${at}.termination.${field}`))
        numbers(t[field] as Fields, `${at}.termination.${field}`, "re", "im");
    });
  return found;
}

/** A value as it may stand in a message: short, whatever it is. */
function shown(value: unknown): string {
  if (typeof value === "string") return JSON.stringify(value.slice(0, 40));
  return value === undefined ? "missing" : kindOf(value);
}
