package yardloom.kernel.unit;

/** What a quantity measures; two quantities can be added only when their dimensions are equal. */
public enum Dimension {
  LENGTH("length", "4.ft"),
  AREA("area", "600.sqft"),
  VOLUME("volume", "2.yd3"),
  MASS("mass", "40.lb"),
  ANGLE("angle", "30.deg"),
  FLOW("flow", "4.gpm"),
  PRESSURE("pressure", "25.psi"),
  TEMPERATURE("temperature", "50.degF"),
  DURATION("duration", "3.weeks"),
  MONEY("money", "120.money");

  private final String word;
  private final String example;

  Dimension(String word, String example) {
    this.word = word;
    this.example = example;
  }

  /** The everyday word, used in messages. */
  public String word() {
    return word;
  }

  /** A literal of this dimension as a plan script writes it. */
  public String example() {
    return example;
  }
}
