package yardloom.scripts.check;

/** The type of an expression that already has a problem; whatever is done with it is no news. */
final class Hole {
  private Hole() {}
}
