package yardloom.sun.shade;

/** Something solid, as a cell sees it. */
public sealed interface Body permits ConvexBody, CrownBody, FarHorizon {
  /**
   * Writes into {@code profile} what the body hides from the eye.
   *
   * @param who the obstacle the body is part of
   */
  void mark(double eyeX, double eyeY, double eyeZ, ColumnProfile profile, int who);
}
