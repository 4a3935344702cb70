package yardloom.planting.suit.rule;

/** How a plant suits its place; later is worse. */
public enum Suits {
  /** Nothing speaks against it. */
  FITS,
  /** It does if something is done or accepted. */
  FITS_IF,
  /** It fails there, or bears nothing. */
  DOES_NOT_FIT
}
