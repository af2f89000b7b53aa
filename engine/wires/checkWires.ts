import { C0_mPerS } from "../constants.ts";
import type { WireInput, WireProblem } from "../contract.ts";
import type { Problem } from "../result.ts";
import { checkShape } from "./checkShape.ts";
import { checkSurface, LOWEST_OVER_SOIL_M, unsupportedEnds } from "./checkSurface.ts";
import { gappedJunctions } from "./gappedJunctions.ts";
import { imagesCurrents } from "./imagesCurrents.ts";
import { JOIN_DISTANCE_m, joinWires } from "./joinWires.ts";
import { segmentCounts } from "./segmentCounts.ts";
import { segmentDistance } from "./segmentDistance.ts";
import { soilAround } from "./soilAround.ts";

const FREQUENCY_RANGE_HZ = [1e3, 1e10] as const;
/** Range over which the half-space kernels were checked against independent values, with some room. */
const FULL_WAVE_RANGE_HZ = [1e6, 60e6] as const;
const MOST_WIRES = 2000;
const MOST_SEGMENTS = 4000;
const MOST_PORTS = 64;
/** Thinnest wire, radius over length; the kernel is good far below what anyone strings up. */
const THINNEST = 1e-9;
/** Largest distance between any two ends, in wavelengths: the phase tables and the sum over directions stop there. */
const WIDEST_WAVELENGTHS = 1000;
const MOST_SOURCE = 1e9;
const MOST_LOAD_ohm = 1e12;

/**
 * Everything a person can put right in a set of wires, all of it at once. An empty list means the set may be meshed.
 * What has not even the shape of a problem is only told its shape; distances of wires are judged once every wire is sound
 * by itself. Any data may be handed in; nothing is thrown.
 */
export function checkWires(problem: WireProblem): Problem[] {
  const shape = checkShape(problem);
  if (shape.length > 0) return shape;
  const found: Problem[] = [];
  const say = (code: string, where: string, message: string) => found.push({ code, where, message });
  const finite = (...v: readonly unknown[]) => v.every((x) => typeof x === "number" && Number.isFinite(x));
  const within = (most: number, ...v: readonly number[]) => v.every((x) => Math.abs(x) <= most);

  const f = problem.frequency_Hz;
  const fullWave = problem.ground.kind === "soil" && !imagesCurrents(problem);
  if (!finite(f) || f < FREQUENCY_RANGE_HZ[0] || f > FREQUENCY_RANGE_HZ[1])
    say("frequency-range", "frequency_Hz", `Frequency ${f} Hz is outside 1 kHz to 10 GHz.`);

  const { ground } = problem;
  if (ground.kind === "soil") {
    if (!finite(ground.relativePermittivity) || ground.relativePermittivity < 1 || ground.relativePermittivity > 1000)
      say(
        "permittivity-range",
        "ground.relativePermittivity",
        `Relative permittivity ${ground.relativePermittivity} is outside 1 to 1000.`,
      );
    if (!finite(ground.conductivity_SPerM) || ground.conductivity_SPerM < 0)
      say(
        "conductivity-range",
        "ground.conductivity_SPerM",
        `Conductivity ${ground.conductivity_SPerM} S/m is not zero or more.`,
      );
    if (fullWave && (f < FULL_WAVE_RANGE_HZ[0] || f > FULL_WAVE_RANGE_HZ[1]))
      say(
        "full-wave-frequency",
        "frequency_Hz",
        `Frequency ${f} Hz is outside 1 MHz to 60 MHz, the range of the full-wave soil model.`,
      );
  }

  // Without a sound frequency and soil there is none to measure wires by.
  const soil = found.length === 0 ? soilAround(problem) : undefined;

  (problem.screens ?? []).forEach((screen, i) => {
    const at = `screens[${i}]`;
    if (!finite(screen.x_m, screen.y_m))
      say("screen-place", at, `Place ${screen.x_m}, ${screen.y_m} m is not a pair of numbers.`);
    if (!Number.isInteger(screen.count) || screen.count < 0 || screen.count > 1000)
      say("screen-count", `${at}.count`, `Radial count ${screen.count} is not a whole number from 0 to 1000.`);
    if (!finite(screen.length_m) || screen.length_m <= 0)
      say("screen-length", `${at}.length_m`, `Radial length ${screen.length_m} m is not above 0.`);
    if (!finite(screen.radius_m) || screen.radius_m <= 0 || screen.radius_m >= screen.length_m)
      say(
        "screen-radius",
        `${at}.radius_m`,
        `Radial radius ${screen.radius_m} m is not above 0 and below the length ${screen.length_m} m.`,
      );
  });

  const { wires, ports } = problem;
  if (wires.length === 0) say("no-wires", "wires", "There is no wire.");
  if (wires.length > MOST_WIRES) say("too-many-wires", "wires", `${wires.length} wires; the limit is ${MOST_WIRES}.`);
  if (ports.length === 0) say("no-ports", "ports", "There is no port: nothing feeds the wires.");
  if (ports.length > MOST_PORTS) say("too-many-ports", "ports", `${ports.length} ports; the limit is ${MOST_PORTS}.`);

  const ids = new Set<string>();
  let sound = true;
  wires.forEach((wire, i) => {
    const at = `wires[${i}]`;
    const before = found.length;
    if (ids.has(wire.id)) say("wire-id-twice", `${at}.id`, `Wire name "${wire.id}" is used twice.`);
    ids.add(wire.id);
    if (!finite(...wire.from_m, ...wire.to_m))
      say("wire-ends", at, `The ends of wire "${wire.id}" are not three numbers each.`);
    else {
      const L = Math.hypot(wire.to_m[0] - wire.from_m[0], wire.to_m[1] - wire.from_m[1], wire.to_m[2] - wire.from_m[2]);
      if (!(L > 1e-6 && Number.isFinite(L)))
        say("wire-length", at, `Wire "${wire.id}" is ${L} m long; the limit is above 1e-6 m.`);
      else if (!finite(wire.radius_m) || wire.radius_m <= 0)
        say("wire-radius", `${at}.radius_m`, `Radius ${wire.radius_m} m is not above 0.`);
      else if (2 * wire.radius_m >= L)
        say(
          "wire-thick",
          `${at}.radius_m`,
          `Wire "${wire.id}" is ${2 * wire.radius_m} m thick and ${L} m long; it must be longer than thick.`,
        );
      else if (wire.radius_m < THINNEST * L)
        say(
          "wire-thin",
          `${at}.radius_m`,
          `Wire "${wire.id}" has a radius of ${wire.radius_m} m; on ${L} m of length the limit is ${THINNEST * L} m.`,
        );
      if (fullWave) {
        const wrong = checkSurface(wire, soil);
        if (wrong) say(wrong.code, at, wrong.message);
      } else if (ground.kind !== "free-space") {
        const low = Math.min(wire.from_m[2], wire.to_m[2]);
        const high = Math.max(wire.from_m[2], wire.to_m[2]);
        if (low < -1e-6)
          say("wire-below-ground", at, `Wire "${wire.id}" reaches z = ${low} m; the limit is 0 over this ground.`);
        else if (high <= wire.radius_m)
          say(
            "wire-on-ground",
            at,
            `Wire "${wire.id}" lies at z = ${high} m, no higher than its radius of ${wire.radius_m} m.`,
          );
        else if (low > 1e-6 && low < wire.radius_m)
          say(
            "wire-on-ground",
            at,
            `Wire "${wire.id}" comes down to z = ${low} m, closer than its radius of ${wire.radius_m} m.`,
          );
      }
    }
    if (wire.conductivity_SPerM !== undefined && (!finite(wire.conductivity_SPerM) || wire.conductivity_SPerM <= 0))
      say(
        "wire-conductivity",
        `${at}.conductivity_SPerM`,
        `Conductivity ${wire.conductivity_SPerM} S/m is not above 0.`,
      );
    const { insulation } = wire;
    if (insulation && !(insulation.radius_m > wire.radius_m && finite(insulation.radius_m)))
      say(
        "wire-insulation",
        `${at}.insulation.radius_m`,
        `Insulation of wire "${wire.id}" has a radius of ${insulation.radius_m} m; it must be above the wire's ${wire.radius_m} m.`,
      );
    if (insulation && !(insulation.relativePermittivity >= 1 && finite(insulation.relativePermittivity)))
      say(
        "wire-insulation",
        `${at}.insulation.relativePermittivity`,
        `Insulation of wire "${wire.id}" has a relative permittivity of ${insulation.relativePermittivity}; the limit is 1 and more.`,
      );
    if (
      wire.segments !== undefined &&
      (!Number.isInteger(wire.segments) || wire.segments < 1 || wire.segments > MOST_SEGMENTS)
    )
      say(
        "wire-segments",
        `${at}.segments`,
        `Segment count ${wire.segments} is not a whole number from 1 to ${MOST_SEGMENTS}.`,
      );
    if (found.length > before) sound = false;
  });
  const portIds = new Set<string>();
  const gaps = new Set<string>();
  let driven = false;
  ports.forEach((port, i) => {
    const at = `ports[${i}]`;
    if (portIds.has(port.id)) say("port-id-twice", `${at}.id`, `Port name "${port.id}" is used twice.`);
    portIds.add(port.id);
    if (!ids.has(port.wire))
      say("port-wire", `${at}.wire`, `Port "${port.id}" names wire "${port.wire}", which is not there.`);
    if (!finite(port.position) || port.position < 0 || port.position > 1)
      say("port-position", `${at}.position`, `Position ${port.position} is outside 0 to 1.`);
    const gap = `${port.wire}|${port.position}`;
    if (gaps.has(gap)) say("port-place-twice", at, `Port "${port.id}" sits in a gap that has a port already.`);
    gaps.add(gap);
    const t = port.termination;
    if (t.kind === "voltage" || t.kind === "current") {
      driven = true;
      const v = t.kind === "voltage" ? t.volts : t.amperes;
      if (!within(MOST_SOURCE, v.re, v.im))
        say("port-value", `${at}.termination`, `Port "${port.id}" has a source that is not within ±${MOST_SOURCE}.`);
    } else if (t.kind === "load" && !within(MOST_LOAD_ohm, t.impedance_ohm.re, t.impedance_ohm.im))
      say("port-value", `${at}.termination`, `Port "${port.id}" has a load that is not within ±${MOST_LOAD_ohm} ohm.`);
  });
  if (ports.length > 0 && !driven)
    say("nothing-fed", "ports", "No port has a voltage or a current: nothing feeds the wires.");
  if (!sound || wires.length > MOST_WIRES) return found;
  if (!found.some((p) => p.code === "frequency-range")) {
    const wavelength_m = C0_mPerS / f;
    // A port inside a wire may add a segment.
    const segments = segmentCounts(wires, wavelength_m, soil).reduce((a, b) => a + b, ports.length);
    if (segments > MOST_SEGMENTS)
      say("too-many-segments", "wires", `These wires come to ${segments} segments; the limit is ${MOST_SEGMENTS}.`);
    const span = ([0, 1, 2] as const).map((axis) => {
      const at = wires.flatMap((w) => [w.from_m[axis], w.to_m[axis]]);
      return at.reduce((a, b) => Math.max(a, b), at[0] ?? 0) - at.reduce((a, b) => Math.min(a, b), at[0] ?? 0);
    });
    const wide = Math.hypot(...span) / wavelength_m;
    if (!(wide <= WIDEST_WAVELENGTHS))
      say("wires-spread", "wires", `The wires span ${wide} wavelengths; the limit is ${WIDEST_WAVELENGTHS}.`);
  }

  const graph = joinWires(wires, imagesCurrents(problem));
  if (fullWave)
    for (const w of unsupportedEnds(wires, graph))
      say(
        "wire-near-soil",
        `wires[${w}]`,
        `Wire "${wires[w]!.id}" ends at z = 0 with no wire in the soil to join; in air the limit is ${LOWEST_OVER_SOIL_M} m.`,
      );
  ports.forEach((port, i) => {
    const w = wires.findIndex((x) => x.id === port.wire);
    if (w < 0 || (port.position > 0 && port.position < 1)) return;
    const node = graph.endNode[2 * w + (port.position <= 0 ? 0 : 1)]!;
    if (graph.degree[node]! < 2 && !graph.grounded[node])
      say(
        "port-free-end",
        `ports[${i}].position`,
        `Port "${port.id}" is at an end of wire "${port.wire}" that meets nothing.`,
      );
  });
  for (const { ports: around } of gappedJunctions(wires, ports, graph)) {
    const last = around.at(-1)!;
    const names = around.map((i) => `"${ports[i]!.id}"`).join(" and ");
    if (around.length === 2)
      say(
        "port-place-twice",
        `ports[${last}]`,
        `Ports ${names} sit in one gap, on either side of a joint of two wires.`,
      );
    else if (around.every((i) => ports[i]!.termination.kind === "current" || ports[i]!.termination.kind === "open"))
      say(
        "junction-cut-off",
        `ports[${last}]`,
        `Ports ${names} cut their junction off: the current of at least one must be left to settle by itself.`,
      );
  }
  // Wires that share no end must keep clear of each other; wires that share one must part from it.
  for (let i = 0; i < wires.length; i++)
    for (let j = 0; j < i; j++) {
      const p = wires[i]!;
      const q = wires[j]!;
      const clear = (p.insulation ?? p).radius_m + (q.insulation ?? q).radius_m;
      if (areFarApart(p, q, clear)) continue;
      const shared = [0, 1].flatMap((a) =>
        [0, 1].filter((b) => graph.endNode[2 * i + a] === graph.endNode[2 * j + b]).map((b) => [a, b]),
      );
      if (shared.length === 0) {
        const distance = segmentDistance(p.from_m, p.to_m, q.from_m, q.to_m);
        if (distance < clear)
          say(
            "wires-touch",
            `wires[${i}]`,
            `Wires "${p.id}" and "${q.id}" come within ${Number(distance.toFixed(6))} m of each other; they touch below ${clear} m.`,
          );
      } else {
        const away = (w: typeof p, end: number) => {
          const [from, to] = end === 0 ? [w.from_m, w.to_m] : [w.to_m, w.from_m];
          const L = Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
          return [(to[0] - from[0]) / L, (to[1] - from[1]) / L, (to[2] - from[2]) / L] as const;
        };
        const [a, b] = shared[0]!;
        const u = away(p, a!);
        const v = away(q, b!);
        if (shared.length > 1 || u[0] * v[0] + u[1] * v[1] + u[2] * v[2] > 1 - 1e-9)
          say("wires-overlap", `wires[${i}]`, `Wires "${p.id}" and "${q.id}" lie on one another.`);
      }
    }
  return found;
}

/** Do the boxes around two wires keep clear of each other, so that the wires surely do? */
function areFarApart(p: WireInput, q: WireInput, clear_m: number): boolean {
  const reach = clear_m + 2 * JOIN_DISTANCE_m;
  for (let c = 0 as 0 | 1 | 2; c < 3; c++) {
    const [a, b, d, e] = [p.from_m[c], p.to_m[c], q.from_m[c], q.to_m[c]];
    if (Math.min(a, b) > Math.max(d, e) + reach || Math.min(d, e) > Math.max(a, b) + reach) return true;
  }
  return false;
}
