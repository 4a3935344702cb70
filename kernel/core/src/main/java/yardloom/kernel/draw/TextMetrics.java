package yardloom.kernel.draw;

/** Widths of text in the shipped font; the same on every machine. */
public interface TextMetrics {
  /** The advance width in millimetres of {@code text} set at the letter size {@code emMm}. */
  double widthMm(String text, double emMm, boolean bold);
}
