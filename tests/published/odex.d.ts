/** What the drop tests use of the ODE solver, which comes without types. */
declare module "odex" {
  export class Solver {
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
}
