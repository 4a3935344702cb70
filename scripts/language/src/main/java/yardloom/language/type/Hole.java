package yardloom.language.type;

/** The type of an expression that already has a problem; whatever is done with it is no news. */
public final class Hole {
  private Hole() {}
}
