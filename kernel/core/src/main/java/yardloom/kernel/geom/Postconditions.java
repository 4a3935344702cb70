package yardloom.kernel.geom;

import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;

/** What every offset must satisfy; a breach is a fault of the program and says so. */
final class Postconditions {
  /** Ground that the grid of the overlays may move across a boundary, per metre of boundary. */
  private static final double ROUNDING_M2_PER_M = 1e-6;

  private Postconditions() {}

  static void smaller(Shape whole, Shape part, String what) {
    double roundingM2 = ROUNDING_M2_PER_M * whole.perimeter().metres();
    if (part.area().squareMetres() > whole.area().squareMetres() + roundingM2) {
      throw broken(what, "is not a smaller shape", whole);
    }
  }

  static PlanException broken(String what, String how, Shape shape) {
    String text = shape.toString();
    return new PlanException(
        ProblemCode.INTERNAL,
        "the "
            + what
            + " "
            + how
            + "; please report this outline: "
            + (text.length() > 2_000 ? text.substring(0, 2_000) + "…" : text));
  }
}
