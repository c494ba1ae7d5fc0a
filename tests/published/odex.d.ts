/**
 * What the drop tests use of the ODE solver. The package carries sources that do not compile under our settings, so
 * the compiler is led here instead.
 */
export declare class Solver {
  constructor(dimension: number);
  relativeTolerance: number;
  absoluteTolerance: number;
  maxSteps: number;
  solve(
    derivative: (time: number, state: number[]) => number[],
    start: number,
    initial: number[],
    end: number,
  ): { readonly y: number[]; readonly outcome: number };
}
