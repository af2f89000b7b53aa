import type { Complex } from "../../contract.ts";
import { failed, ok, type Result } from "../../result.ts";
import { cx } from "../cx.ts";
import type { Line } from "../line/Line.ts";
import { lineWavelength_m } from "../line/lineWavelength_m.ts";
import { checkPair } from "./checkPair.ts";
import { type DrivePoint, drivePoints } from "./drivePoints.ts";
import type { HarnessDesign } from "./HarnessDesign.ts";

/**
 * Two lines of one kind, each as long as brings its voltage, with the wanted base currents, to one and the same phasor;
 * there they are joined, and the currents cannot help but be right.
 *
 * Along line i the voltage is Vᵢ cos θ + jZ₀Iᵢ sin θ, an ellipse in the plane of phasors. The two ellipses meet where
 * ‖M₂⁻¹M₁(cos θ₁, sin θ₁)‖ = 1, M's columns being Vᵢ and jZ₀Iᵢ: a sine of 2θ₁ in closed form. Both
 * meetings are given, line 1 below half a wave and line 2 below a whole one (half a wave more on both turns both
 * voltages over and changes nothing), the least cable first.
 *
 * Exact for lines without loss; a lossy line's currents come out a little off, as `solveNetwork` shows.
 * Source: derived here; the idea, to join lines where their voltages agree, is common practice for phased verticals.
 * Problems: those of `checkPair`; "no-match" where the ellipses do not meet, or an element takes no power.
 */
export function equalVoltageHarness(
  impedance_ohm: readonly (readonly Complex[])[],
  frequency_MHz: number,
  ratio: Complex,
  line: Line,
): Result<readonly HarnessDesign[]> {
  const findings = checkPair(impedance_ohm, ratio, frequency_MHz);
  if (findings.problems.length > 0) return failed(...findings.problems);
  const [one, two] = drivePoints(impedance_ohm, [cx.one, ratio]);
  const none = (why: string) =>
    failed({ code: "no-match", where: "ratio", message: `No two lengths of ${line.name} do: ${why}.` });
  const m1 = columns(one!, line);
  const m2 = columns(two!, line);
  const det = m2.a * m2.d - m2.b * m2.c;
  if (Math.abs(det) < 1e-9 * (m2.a * m2.a + m2.b * m2.b + m2.c * m2.c + m2.d * m2.d))
    return none("element 2 takes no power at these currents, its line's voltage has one phase all along");
  // T = M₂⁻¹M₁, real 2 × 2.
  const t = {
    a: (m2.d * m1.a - m2.b * m1.c) / det,
    b: (m2.d * m1.b - m2.b * m1.d) / det,
    c: (m2.a * m1.c - m2.c * m1.a) / det,
    d: (m2.a * m1.d - m2.c * m1.b) / det,
  };
  // ‖T(cos θ, sin θ)‖² = mean + even cos 2θ + odd sin 2θ.
  const s11 = t.a * t.a + t.c * t.c;
  const s22 = t.b * t.b + t.d * t.d;
  const odd = t.a * t.b + t.c * t.d;
  const even = (s11 - s22) / 2;
  const swing = Math.hypot(even, odd);
  const cos = (1 - (s11 + s22) / 2) / swing;
  if (!(Math.abs(cos) <= 1)) return none("along one line the voltage is everywhere higher than along the other");
  const wave = lineWavelength_m(line, frequency_MHz);
  const designs = [Math.acos(cos), -Math.acos(cos)].map((away) => {
    const theta1 = positive((Math.atan2(odd, even) + away) / 2);
    const theta2 = Math.atan2(
      t.c * Math.cos(theta1) + t.d * Math.sin(theta1),
      t.a * Math.cos(theta1) + t.b * Math.sin(theta1),
    );
    // Half a wave more on one line alone would turn its voltage over, so line 2 may run up to a whole wave.
    return [theta1, theta2 < 0 ? theta2 + 2 * Math.PI : theta2].map((x) => (x / (2 * Math.PI)) * wave);
  });
  return ok(
    designs
      .sort((a, b) => a[0]! + a[1]! - b[0]! - b[1]!)
      .map(([first, second]) => ({
        kind: "equal-voltage",
        name: "two lines joined where their voltages agree",
        network: {
          source: "tee",
          bases: ["base 1", "base 2"],
          parts: [lineOrLink("line 1", "base 1", line, first!), lineOrLink("line 2", "base 2", line, second!)],
        },
        wantedRatio: ratio,
        isExact: true,
        notes: [],
      })),
  );
}

/** Columns V and jZ₀I as a real matrix (a b; c d). */
const columns = ({ voltage_V: v, current_A: i }: DrivePoint, { impedance_ohm: z }: Line) => ({
  a: v.re,
  b: -z * i.im,
  c: v.im,
  d: z * i.re,
});

/** The angle below half a turn that differs by whole half turns; both lines are then turned over together. */
const positive = (theta: number): number => {
  const rest = theta % Math.PI;
  return rest < 0 ? rest + Math.PI : rest;
};

const lineOrLink = (id: string, to: string, line: Line, length_m: number) =>
  length_m > 1e-9
    ? ({ id, kind: "line", from: "tee", to, line, length_m } as const)
    : ({ id, kind: "contact", from: "tee", to, closed: true } as const);
