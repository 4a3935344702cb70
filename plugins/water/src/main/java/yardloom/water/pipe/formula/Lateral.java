package yardloom.water.pipe.formula;

/**
 * A pipe with evenly spaced equal outlets, the first one spacing from its inlet, closed at its far
 * end.
 *
 * <p>Solved by marching from the far end to the inlet and seeking the far head along chords, then
 * by halving, which converges to double precision for any friction law. Heads are above the outlet,
 * in metres.
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
  private static final int CHORDS = 40;

  /** In proportion; a few thousand times what a double resolves. */
  private static final double CLOSE = 1e-12;

  private static final double ROUGH = 1e-4;

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
    Friction.Bore bore = friction.in(diameterM);
    double[] ends = ends(inletHeadM, bore);
    near(ends, inletHeadM, bore);
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (ends[0] + ends[1]) / 2;
      if (middle == ends[0] || middle == ends[1]) {
        break;
      }
      ends[inletHead(march(middle, bore), bore) > inletHeadM ? 1 : 0] = middle;
    }
    return march(ends[0], bore);
  }

  /**
   * The same to about four digits, in a quarter of the work.
   *
   * @throws IllegalArgumentException if that head does not reach the far end
   */
  Solution about(double inletHeadM) {
    Friction.Bore bore = friction.in(diameterM);
    return march(chords(ends(inletHeadM, bore), inletHeadM, bore, ROUGH), bore);
  }

  /** Two heads at the far end, of which one asks for too little and the other for too much. */
  private double[] ends(double inletHeadM, Friction.Bore bore) {
    if (inletHead(march(0, bore), bore) > inletHeadM) {
      throw new IllegalArgumentException(
          "a head of " + inletHeadM + " m does not reach the end of the pipe");
    }
    return new double[] {0, inletHeadM + Math.max(0, -risePerM) * spacingM * outlets};
  }

  /**
   * Draws the ends about the far head together along chords (the Illinois rule: an end that stays
   * counts half) until they settle; halving would take five times as many marches to get there.
   */
  private double chords(double[] ends, double inletHeadM, Friction.Bore bore, double close) {
    double below = inletHead(march(ends[0], bore), bore) - inletHeadM;
    double above = inletHead(march(ends[1], bore), bore) - inletHeadM;
    int last = -1;
    double at = ends[0];
    for (int i = 0; i < CHORDS && above > 0; i++) {
      double next = ends[0] + (ends[1] - ends[0]) * (below / (below - above));
      boolean settled = Math.abs(next - at) <= close * next;
      at = next;
      if (settled || !(at > ends[0] && at < ends[1])) {
        break;
      }
      double off = inletHead(march(at, bore), bore) - inletHeadM;
      int end = off > 0 ? 1 : 0;
      ends[end] = at;
      above = end == 1 ? off : end == last ? above / 2 : above;
      below = end == 0 ? off : end == last ? below / 2 : below;
      last = end;
    }
    return at;
  }

  /** Draws the ends close about the far head. */
  private void near(double[] ends, double inletHeadM, Friction.Bore bore) {
    double at = chords(ends, inletHeadM, bore, CLOSE);
    for (double side : new double[] {at * (1 - CLOSE), at * (1 + CLOSE)}) {
      if (side > ends[0] && side < ends[1]) {
        ends[inletHead(march(side, bore), bore) > inletHeadM ? 1 : 0] = side;
      }
    }
  }

  private double inletHead(Solution s, Friction.Bore bore) {
    return s.headM[0] + step(s.inflowM3s, bore);
  }

  private double step(double flowM3s, Friction.Bore bore) {
    return (bore.gradient(flowM3s) + risePerM) * spacingM;
  }

  private Solution march(double farHeadM, Friction.Bore bore) {
    double[] head = new double[outlets];
    double[] flow = new double[outlets];
    double carried = 0;
    for (int i = outlets - 1; i >= 0; i--) {
      head[i] = i == outlets - 1 ? farHeadM : head[i + 1] + step(carried, bore);
      flow[i] = emitter.flowM3s(head[i]);
      carried += flow[i];
    }
    return new Solution(head, flow, carried);
  }
}
