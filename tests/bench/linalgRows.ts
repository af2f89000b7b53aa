import { complex, lusolve, type MathNumericType, matrix as mathMatrix } from "mathjs";
import { factorLu } from "../../engine/linalg/factorLu.ts";
import { factorSymmetric } from "../../engine/linalg/factorSymmetric.ts";
import { solveSymmetric } from "../../engine/linalg/solveSymmetric.ts";
import type { BenchRow } from "./BenchRow.ts";
import { bestTimes_ms } from "./bestTimes.ts";

/** Complex symmetric with a heavy diagonal, as matrices of thin wires are; the same numbers in every run. */
function wireLikeMatrix(n: number): Float64Array {
  const matrix = new Float64Array(2 * n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) {
      const apart = Math.abs(i - j);
      matrix[2 * (i * n + j)] = Math.cos(0.3 * apart) / (1 + apart);
      matrix[2 * (i * n + j) + 1] = i === j ? 8 : -Math.sin(0.3 * apart) / (1 + apart);
    }
  return matrix;
}

export function linalgRows(): BenchRow[] {
  const rows: BenchRow[] = [];
  {
    const n = 100;
    const a = wireLikeMatrix(n);
    const b = new Float64Array(2 * n).fill(1);
    const at = (i: number, j: number) => complex(a[2 * (i * n + j)]!, a[2 * (i * n + j) + 1]!);
    const entries = Array.from({ length: n }, (_, i) => Array.from({ length: n }, (_, j): MathNumericType => at(i, j)));
    const mathA = mathMatrix(entries);
    const mathB = mathMatrix(Array.from({ length: n }, (): MathNumericType => complex(1, 1)));
    const [ours, theirs] = bestTimes_ms(
      [
        { name: "solveSymmetric", run: () => solveSymmetric(a, n, b, 1) },
        { name: "lusolve", run: () => lusolve(mathA, mathB) },
      ],
      5,
    );
    rows.push({
      name: "solve 100 complex equations: mathjs lusolve / engine",
      measured: theirs! / ours!,
      goal: 100,
      unit: "×",
      atLeast: true,
      remark: `${theirs!.toFixed(0)} ms / ${ours!.toFixed(2)} ms, residual check included`,
    });
  }
  for (const n of [100, 200, 400]) {
    const a = wireLikeMatrix(n);
    const [symmetric, lu] = bestTimes_ms([
      { name: "factorSymmetric", run: () => factorSymmetric(a, n) },
      { name: "factorLu", run: () => factorLu(a, n) },
    ]);
    rows.push({
      name: `factor ${n} × ${n}: L D Lᵀ without pivoting / LU with`,
      measured: symmetric! / lu!,
      goal: 0.5,
      unit: "×",
      remark: `${symmetric!.toFixed(2)} ms / ${lu!.toFixed(2)} ms, ${(((4 / 3) * n ** 3 * 1e-6) / symmetric!).toFixed(1)} GFLOP/s`,
    });
  }
  return rows;
}
