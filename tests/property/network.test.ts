import fc from "fast-check";
import { expect, test } from "vitest";
import {
  antennaImpedance,
  type Complex,
  chainLoss_dB,
  designMatches,
  drivePoints,
  type Line,
  lineChain,
  lossWithSwr_dB,
  makeLine,
  matchedLoss_dB,
  type Network,
  type Part,
  rigImpedance,
  solveNetwork,
  swr,
  toReflection,
} from "../../engine/index.ts";
import { propagation } from "../../engine/network/line/propagation.ts";
import { gaussLegendre } from "../../engine/quad/gaussLegendre.ts";
import { aLine } from "../support/aLine.ts";
import { between } from "../support/between.ts";
import { okValue } from "../support/okValue.ts";

const settings = { seed: 1893, numRuns: 200 } as const;
const frequencies = between(1.8, 30);
const loads = fc.record({ re: between(2, 400), im: between(-300, 300) });
const lines: fc.Arbitrary<Line> = fc
  .record({
    impedance_ohm: between(25, 300),
    velocityFactor: between(0.5, 1),
    root_dBPer100m: between(0, 1.6),
    linear_dBPer100m: between(0, 0.1),
    impedanceAngle: fc.constantFrom("real" as const, "by-loss" as const),
  })
  .map((t) => okValue(makeLine({ id: "any", name: "any", ...t, loss: t })));

/** Passive antennas of P ports: real part A Aᵀ + something on the diagonal, imaginary part symmetric. */
const antennas = (ports: number): fc.Arbitrary<Complex[][]> =>
  fc
    .tuple(
      fc.array(between(-5, 5), { minLength: ports * ports, maxLength: ports * ports }),
      fc.array(between(-80, 80), { minLength: ports * ports, maxLength: ports * ports }),
    )
    .map(([a, x]) =>
      Array.from({ length: ports }, (_, i) =>
        Array.from({ length: ports }, (_, j) => {
          let re = i === j ? 5 : 0;
          for (let k = 0; k < ports; k++) re += a[i * ports + k]! * a[j * ports + k]!;
          return { re, im: x[Math.min(i, j) * ports + Math.max(i, j)]! };
        }),
      ),
    );

/** Any tree of parts from the source to every base, some parts across, some more between nodes. */
const networks: fc.Arbitrary<{ network: Network; impedance_ohm: Complex[][] }> = fc
  .integer({ min: 1, max: 3 })
  .chain((ports) => {
    const bases = Array.from({ length: ports }, (_, i) => `base ${i}`);
    const nodes = ["rig", "a", "b", ...bases];
    const value = fc.oneof(
      fc.record({ kind: fc.constant("resistor" as const), resistance_ohm: between(0.1, 200) }),
      fc.record({ kind: fc.constant("coil" as const), inductance_uH: between(0.05, 10), q: between(20, 500) }),
      fc.record({ kind: fc.constant("capacitor" as const), capacitance_pF: between(20, 3000), q: between(50, 5000) }),
      fc.record({ kind: fc.constant("line" as const), line: lines, length_m: between(0.2, 60) }),
    );
    const bridging = fc.tuple(value, fc.nat(), fc.nat());
    return fc
      .tuple(
        antennas(ports),
        fc.array(value, { minLength: nodes.length - 1, maxLength: nodes.length - 1 }),
        fc.array(fc.nat(), { minLength: nodes.length - 1, maxLength: nodes.length - 1 }),
        fc.array(bridging, { maxLength: 4 }),
      )
      .map(([impedance_ohm, values, from, bridges]) => {
        const tree = values.map((v, i) => ({ ...v, id: `t${i}`, from: nodes[from[i]! % (i + 1)]!, to: nodes[i + 1]! }));
        const grounded = ["ground", ...nodes];
        const more = bridges.flatMap(([v, i, j], k) => {
          const [f, t] = [grounded[i % grounded.length]!, grounded[j % grounded.length]!];
          // From a node to itself nothing is to be learned. A line to ground is a shorted stub.
          return f === t ? [] : [{ ...v, id: `m${k}`, from: f, to: t }];
        });
        return { network: { source: "rig", bases, parts: [...tree, ...more] as Part[] }, impedance_ohm };
      });
  });

test("power is kept in any network, and no passive part gives any", () => {
  fc.assert(
    fc.property(networks, frequencies, between(1, 1500), ({ network, impedance_ohm }, f, power_W) => {
      const found = okValue(solveNetwork(network, impedance_ohm, f, power_W));
      expect(found.imbalance).toBeLessThan(1e-9);
      const antenna = found.bases.reduce((sum, b) => sum + b.power_W, 0);
      expect(Math.abs(found.dissipated_W + antenna - power_W)).toBeLessThan(1e-9 * power_W);
      for (const part of found.parts) expect(part.dissipated_W).toBeGreaterThan(-1e-9 * power_W);
      // Base voltages by the antenna's own law.
      const driven = drivePoints(
        impedance_ohm,
        found.bases.map((b) => b.current_A),
      );
      for (const [i, base] of found.bases.entries()) {
        const { voltage_V: v } = driven[i]!;
        const size = Math.hypot(v.re, v.im) + 1e-6;
        expect(Math.hypot(v.re - base.voltage_V.re, v.im - base.voltage_V.im)).toBeLessThan(1e-8 * size);
      }
      // Kirchhoff's law at every node but the source; dead ends carry nothing, so the measure is the largest current.
      const most = Math.max(...found.parts.map((p) => p.current_Apeak));
      for (const node of Object.keys(found.voltages_V)) {
        if (node === "rig") continue;
        const currents = [
          ...found.parts
            .flatMap((p) => [p.from, p.to])
            .filter((end) => end.node === node)
            .map((end) => end.current_A),
          ...found.bases.filter((b) => b.node === node).map((b) => b.current_A),
        ];
        const sum = currents.reduce((s, i) => ({ re: s.re + i.re, im: s.im + i.im }), { re: 0, im: 0 });
        expect(Math.hypot(sum.re, sum.im)).toBeLessThan(1e-9 * most);
      }
    }),
    settings,
  );
});

test("what a line takes is what its metal and insulation take along it", () => {
  const { node, weight } = gaussLegendre(40);
  fc.assert(
    fc.property(lines, between(0.2, 30), between(1.8, 10), loads, (line, length_m, f, load) => {
      const { gamma, impedance_ohm: z } = propagation(line, f);
      // R + jX = γZ₀, G + jB = γ/Z₀ per metre.
      const r = gamma.re * z.re - gamma.im * z.im;
      const g = (gamma.re * z.re + gamma.im * z.im) / (z.re ** 2 + z.im ** 2);
      let lost = 0;
      const ends = (x: number) => {
        const { a, b, c, d } = lineChain(line, x, f);
        const v = { re: a.re * load.re - a.im * load.im + b.re, im: a.re * load.im + a.im * load.re + b.im };
        const i = { re: c.re * load.re - c.im * load.im + d.re, im: c.re * load.im + c.im * load.re + d.im };
        return { v, i };
      };
      // In pieces, since a long line holds several waves.
      const pieces = 8;
      for (let p = 0; p < pieces; p++)
        for (let q = 0; q < node.length; q++) {
          const { v, i } = ends((length_m / pieces) * (p + node[q]!));
          const here = r * (i.re ** 2 + i.im ** 2) + g * (v.re ** 2 + v.im ** 2);
          lost += ((weight[q]! * length_m) / pieces) * here;
        }
      const { v, i } = ends(length_m);
      const input = v.re * i.re + v.im * i.im;
      expect(Math.abs(input - load.re - lost)).toBeLessThan(1e-10 * input);
      expect(r).toBeGreaterThanOrEqual(-1e-15);
      expect(g).toBeGreaterThanOrEqual(-1e-18);
    }),
    settings,
  );
});

test("line laws: there and back, reflection kept without loss, loss by SWR for a real impedance, one chain or two", () => {
  fc.assert(
    fc.property(lines, frequencies, loads, between(0.1, 80), between(0.1, 80), (line, f, load, l1, l2) => {
      const chain = lineChain(line, l1, f);
      const rig = rigImpedance(chain, load);
      const back = antennaImpedance(chain, rig);
      const loss = matchedLoss_dB(line, l1, f);
      expect(Math.hypot(back.re - load.re, back.im - load.im)).toBeLessThan(
        1e-10 * 10 ** (loss / 5) * (1e3 + Math.hypot(load.re, load.im)),
      );
      const both = rigImpedance(lineChain(line, l1 + l2, f), load);
      const twice = rigImpedance(lineChain(line, l2, f), rig);
      expect(Math.hypot(both.re - twice.re, both.im - twice.im)).toBeLessThan(1e-9 * Math.hypot(both.re, both.im));
      const z = line.impedance_ohm;
      const kept = rigImpedance(lineChain(aLine(z, line.velocityFactor), l1, f), load);
      const size = (w: Complex) => Math.hypot(toReflection(w, z).re, toReflection(w, z).im);
      expect(size(kept)).toBeCloseTo(size(load), 9);
      if (line.impedanceAngle === "real") {
        expect(chainLoss_dB(chain, load)).toBeCloseTo(lossWithSwr_dB(loss, swr(load.re, load.im, z)), 8);
      } else expect(chainLoss_dB(chain, load)).toBeGreaterThanOrEqual(-1e-9);
    }),
    settings,
  );
});

test("every match of any antenna gives what it promises, and loses what its parts take", () => {
  const stock = [aLine(50), aLine(75, 0.8), aLine(93, 0.84)];
  fc.assert(
    fc.property(loads, frequencies, (load, f) => {
      const asked = {
        feed: [{ frequency_MHz: f, impedance_ohm: load }],
        design_MHz: f,
        wanted_ohm: 50,
        swrLimit: 2,
        stock,
      };
      for (const { match, design } of okValue(designMatches(asked)).matches) {
        expect(Math.abs(design.swr - match.promisedSwr)).toBeLessThan(1e-6 * match.promisedSwr);
        if (match.promisedSwr === 1) expect(design.swr).toBeLessThan(1.001);
        expect(Math.abs(design.loss_dB)).toBeLessThan(1e-7);
      }
      const real = { ...asked, coilQ: 150, capacitorQ: 800 };
      for (const { design } of okValue(designMatches(real)).matches) {
        const lost = design.sections.reduce((sum, s) => sum + s.dissipated_W, 0);
        expect(Math.abs(lost + design.antenna.power_W - 100)).toBeLessThan(1e-7);
      }
    }),
    settings,
  );
});

test("equal odd quarter waves without loss force equal currents into any antenna", () => {
  fc.assert(
    fc.property(
      antennas(2),
      frequencies,
      between(25, 300),
      fc.constantFrom(1, 3, 5),
      (impedance_ohm, f, z, quarters) => {
        const line = aLine(z);
        const length_m = (quarters * 0.66 * 299.792458) / f / 4;
        const network: Network = {
          source: "tee",
          bases: ["base 1", "base 2"],
          parts: [1, 2].map((i) => ({ id: `line ${i}`, kind: "line", from: "tee", to: `base ${i}`, line, length_m })),
        };
        const [, ratio] = okValue(solveNetwork(network, impedance_ohm, f)).currentRatios;
        expect(Math.hypot(ratio!.re - 1, ratio!.im)).toBeLessThan(1e-9);
      },
    ),
    settings,
  );
});
