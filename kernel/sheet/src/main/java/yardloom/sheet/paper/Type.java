package yardloom.sheet.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.TextMetrics;

/**
 * Sets text on sheets: sizes, line spacing, wrapping.
 *
 * <p>Widths get {@link #SLACK} more than the shipped font needs, because a viewer without it takes
 * a wider one. Letter heights are capital heights: 2.4 mm is the least on drawing sheets and 2 mm
 * on pages, 2.5, 3.5 and 5 mm follow the lettering series.
 *
 * <p>References: [1] Machine Drawing, section 2.5, Table 2.6: lettering heights 2.5 3.5 5 7 10 mm.
 */
public final class Type {
  static final double SLACK = 1.08;
  public static final double BODY = 2.4;
  private static final double PAGE_BODY = 2.0;
  public static final double HEADING = 2.5;
  public static final double TITLE = 3.5;
  public static final double NAME = 5.0;
  private static final double LINE_PER_EM = 1.32;
  private static final double BASELINE_PER_EM = 1.0;

  private static final Pattern BLANKS = Pattern.compile("[ \n]+");
  private static final Pattern SPACES = Pattern.compile(" +");
  private static final Pattern LINE_END = Pattern.compile("\n");

  private final TextMetrics metrics;
  private final double bodyMm;
  private final boolean ofPages;

  /** For drawing sheets, which are read from further off. */
  public Type(TextMetrics metrics) {
    this(metrics, BODY, false);
  }

  private Type(TextMetrics metrics, double bodyMm, boolean ofPages) {
    this.metrics = metrics;
    this.bodyMm = bodyMm;
    this.ofPages = ofPages;
  }

  /** For pages held in the hand. */
  public static Type ofPages(TextMetrics metrics) {
    return new Type(metrics, PAGE_BODY, true);
  }

  /** The same with running text so many times as high. */
  public Type times(double factor) {
    return new Type(metrics, bodyMm * factor, ofPages);
  }

  /** Whether it sets pages held in the hand. */
  public boolean isOfPages() {
    return ofPages;
  }

  /** The capital height of running text. */
  public double body() {
    return bodyMm;
  }

  /** The capital height of headings, never below that of what they head. */
  public double heading() {
    return Math.max(HEADING, bodyMm);
  }

  public TextMetrics metrics() {
    return metrics;
  }

  /** The width to keep free for {@code text}. */
  public double width(String text, double heightMm, boolean bold) {
    return metrics.widthMm(Signs.shown(text), Ink.Text.emFor(heightMm), bold) * SLACK;
  }

  /** From one baseline to the next. */
  public static double pitch(double heightMm) {
    return Ink.Text.emFor(heightMm) * LINE_PER_EM;
  }

  /** From the top of a line's room to its baseline. */
  public static double baseline(double heightMm) {
    return Ink.Text.emFor(heightMm) * BASELINE_PER_EM;
  }

  /** The room of the line whose top is {@code y}, as ink. */
  public static Ink.Text line(
      String text, double x, double y, double heightMm, boolean bold, Ink.Align align) {
    return line(text, x, y, heightMm, bold, align, Palette.INK);
  }

  public static Ink.Text line(
      String text,
      double x,
      double y,
      double heightMm,
      boolean bold,
      Ink.Align align,
      String colour) {
    return new Ink.Text(
        new Xy(x, y + baseline(heightMm)), text, heightMm, bold, align, colour, false, 0);
  }

  /** The width of the longest word. */
  public double longestWord(String text, double heightMm, boolean bold) {
    double longest = 0;
    for (String word : BLANKS.split(text)) {
      longest = Math.max(longest, width(word, heightMm, bold));
    }
    return longest;
  }

  /**
   * The lines of {@code text} within {@code widthMm}, broken at spaces and line ends; a word that
   * is too long is broken between letters. Blank text gives no line.
   */
  public List<String> wrap(String text, double heightMm, boolean bold, double widthMm) {
    List<String> lines = new ArrayList<>();
    for (String paragraph : LINE_END.split(text.strip())) {
      StringBuilder line = new StringBuilder();
      for (String word : SPACES.split(paragraph.strip())) {
        String rest = word;
        if (!line.isEmpty() && width(line + " " + word, heightMm, bold) <= widthMm) {
          line.append(' ').append(word);
          continue;
        }
        flush(line, lines);
        while (width(rest, heightMm, bold) > widthMm && rest.codePointCount(0, rest.length()) > 1) {
          int cut = fitting(rest, heightMm, bold, widthMm);
          lines.add(rest.substring(0, cut));
          rest = rest.substring(cut);
        }
        line.append(rest);
      }
      flush(line, lines);
    }
    return lines;
  }

  private static void flush(StringBuilder line, List<String> lines) {
    if (!line.isEmpty()) {
      lines.add(line.toString());
      line.setLength(0);
    }
  }

  /** The end of the longest beginning that fits, at least one character. */
  private int fitting(String word, double heightMm, boolean bold, double widthMm) {
    int end = word.offsetByCodePoints(0, 1);
    while (end < word.length()) {
      int next = word.offsetByCodePoints(end, 1);
      if (width(word.substring(0, next), heightMm, bold) > widthMm) {
        return end;
      }
      end = next;
    }
    return end;
  }

  /** Wrapped lines as inks, the first line's room starting at {@code y}. */
  public static List<Ink> lines(
      List<String> lines, double x, double y, double heightMm, boolean bold, String colour) {
    List<Ink> inks = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      double top = y + i * pitch(heightMm);
      inks.add(line(lines.get(i), x, top, heightMm, bold, Ink.Align.START, colour));
    }
    return inks;
  }
}
