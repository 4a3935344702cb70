package yardloom.sheet.compose;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Type;
import yardloom.sheet.paper.Xy;

/**
 * A titled pile of rows that can be broken between any two; the title and the head rows are
 * repeated with the rest.
 *
 * @param content the rows for a given inner width
 * @param from the first body row that is still to be set
 */
record Stack(
    String name,
    String title,
    double minWidthMm,
    boolean boxed,
    Type type,
    DoubleFunction<Content> content,
    int from)
    implements Block {
  private static final double PADDING_MM = 2.5;
  private static final double TITLE_GAP_MM = 1.2;
  private static final Style TOP_RULE = Style.line("block-rule", Palette.INK, 0.5);
  private static final Style BOX = Style.filled("caution-box", "").outlined(Palette.ALERT, 0.5);

  Stack {
    content = content instanceof Remembered ? content : new Remembered(content);
  }

  /** Rows by width: one block is tried in many places before it is set. For one thread. */
  private static final class Remembered implements DoubleFunction<Content> {
    private final DoubleFunction<Content> made;
    private final Map<Double, Content> byWidth = new HashMap<>();

    Remembered(DoubleFunction<Content> made) {
      this.made = made;
    }

    @Override
    public Content apply(double widthMm) {
      // Not computeIfAbsent: a block may be made of others.
      Content known = byWidth.get(widthMm);
      if (known == null) {
        known = made.apply(widthMm);
        byWidth.put(widthMm, known);
      }
      return known;
    }
  }

  /** One row: its height, and its inks for a given upper left corner. */
  record Row(double heightMm, Drawn drawn) {}

  /** Draws a row at a place. */
  interface Drawn {
    List<Ink> at(double x, double y);
  }

  /**
   * Head rows are repeated wherever the body goes on.
   *
   * @param headed rows of the body that belong under the head; those after them are notes
   */
  record Content(List<Row> head, List<Row> body, int headed) {
    Content(List<Row> head, List<Row> body) {
      this(head, body, body.size());
    }

    /** Over notes alone a head would be that of an empty table. */
    List<Row> headOver(int from) {
      return from < headed ? head : List.of();
    }
  }

  @Override
  public Optional<Placed> place(Box room, boolean partly) {
    double pad = boxed ? PADDING_MM : 0;
    double innerWidth = room.width() - 2 * pad;
    Content rows = content.apply(innerWidth);
    List<Ink> inks = new ArrayList<>();
    double x = room.x() + pad;
    double y = room.y() + (boxed ? PADDING_MM : 0.5);
    List<String> heading =
        type.wrap(from == 0 ? title : title + " (continued)", type.heading(), true, innerWidth);
    double headTop = y + heading.size() * Type.pitch(type.heading()) + TITLE_GAP_MM;
    double end = headTop;
    List<Row> head = rows.headOver(from);
    for (Row row : head) {
      end += row.heightMm();
    }
    double limit = room.bottom() - pad;
    int next = from;
    while (next < rows.body().size() && end + rows.body().get(next).heightMm() <= limit + 1e-9) {
      end += rows.body().get(next).heightMm();
      next++;
    }
    boolean whole = next == rows.body().size();
    if (end > limit + 1e-9 || !whole && (!partly || next == from)) {
      return Optional.empty();
    }
    double height = end + pad - room.y();
    inks.add(edge(room, height));
    inks.addAll(
        Type.lines(heading, x, y, type.heading(), true, boxed ? Palette.ALERT : Palette.INK));
    double top = draw(head, x, headTop, inks);
    draw(rows.body().subList(from, next), x, top, inks);
    return Optional.of(
        new Placed(
            List.of(Ink.Group.of(name, title, inks)),
            height,
            whole ? Optional.empty() : Optional.of(from(next))));
  }

  /** Draws rows one under the other; returns where the last one ends. */
  private static double draw(List<Row> rows, double x, double top, List<Ink> inks) {
    double y = top;
    for (Row row : rows) {
      inks.addAll(row.drawn().at(x, y));
      y += row.heightMm();
    }
    return y;
  }

  private Ink edge(Box room, double height) {
    return boxed
        ? Ink.Path.box(BOX, new Box(room.x(), room.y(), room.width(), height))
        : Ink.Path.line(TOP_RULE, new Xy(room.x(), room.y()), new Xy(room.right(), room.y()));
  }

  private Stack from(int row) {
    return new Stack(name, title, minWidthMm, boxed, type, content, row);
  }
}
