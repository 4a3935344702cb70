package yardloom.sheet.compose;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.table.Say;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.UnitSystem;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Type;
import yardloom.sheet.paper.Xy;

/**
 * The title block in the lower right corner: the fields that a drawing needs, in our arrangement. A
 * page to carry has those that tell it from other pages, in a strip along its foot; the rest stands
 * on the sheets.
 *
 * <p>References: [1] ISO 7200:2004, data fields in title blocks, as listed in a program's help
 * page: owner, identification, date of issue, sheet number, title, creator, revision.
 */
final class TitleBlock {
  private static final double PADDING_MM = 3;
  private static final double CELL_GAP_MM = 1.2;

  /** What each field takes of a strip's width. */
  private static final double STRIP_CELL_SHARE = 0.16;

  private static final double LOGO_HEIGHT_MM = 14;
  private static final double LOGO_SHARE = 0.4;
  private static final double LOGO_ON_STRIP_MM = 24;

  private static final String NONE = "\u2013";
  private static final Style EDGE =
      Style.filled("title-block", Palette.PAPER).outlined(Palette.INK, 0.5);
  private static final Style RULE = Style.line("title-rule", Palette.INK, 0.18);

  private final PlanInfo info;
  private final String sheetTitle;
  private final String scale;
  private final String paper;
  private final boolean brief;
  private final FirmLook firm;
  private final Type type;

  private record Field(String caption, String value) {}

  TitleBlock(SheetRequest request, String sheetTitle, String scale, Type type) {
    this.info = request.info();
    this.sheetTitle = sheetTitle;
    this.scale = scale;
    this.paper = request.paper().name();
    this.brief = request.sheet().format().isPocket();
    this.firm = request.firm();
    this.type = type;
  }

  double height(double width) {
    return draw(new Box(0, 0, width, 0), "0 of 0").height();
  }

  /** The block whose lower right corner is that of the frame. */
  List<Ink> inks(double width, Box frame, String sheetOf) {
    double height = height(width);
    Box box = new Box(frame.right() - width, frame.bottom() - height, width, height);
    List<Ink> inks = new ArrayList<>();
    inks.add(Ink.Path.box(EDGE, box));
    inks.addAll(draw(box, sheetOf).inks());
    return List.of(Ink.Group.of("title-block", "Title block", inks));
  }

  private record Drawn(List<Ink> inks, double height) {}

  private Drawn draw(Box box, String sheetOf) {
    if (brief) {
      return strip(box, sheetOf);
    }
    List<Ink> inks = new ArrayList<>();
    double inner = box.width() - 2 * PADDING_MM;
    double x = box.x() + PADDING_MM;
    double y = box.y() + 2;
    Box logo = firm.sized(LOGO_SHARE * inner, LOGO_HEIGHT_MM);
    inks.addAll(firm.logoIn(logo.movedTo(x + inner - logo.width(), y)));
    double foot = y + logo.height();
    inner -= logo.width() > 0 ? logo.width() + PADDING_MM : 0;
    List<String> name = type.wrap(orNone(info.title()), Type.NAME, true, inner);
    double nameHeight = Type.NAME;
    if (name.size() > 1) {
      nameHeight = Type.TITLE;
      name = shortened(type.wrap(orNone(info.title()), nameHeight, true, inner), 3);
    }
    inks.addAll(Type.lines(name, x, y, nameHeight, true, Palette.INK));
    y += name.size() * Type.pitch(nameHeight);
    List<String> title = shortened(type.wrap(sheetTitle, Type.TITLE, false, inner), 2);
    inks.addAll(Type.lines(title, x, y, Type.TITLE, false, Palette.INK));
    y = Math.max(y + title.size() * Type.pitch(Type.TITLE), foot) + 1.5;
    y = rows(inks, box, y, sheetOf);
    return new Drawn(inks, y - box.y());
  }

  /** The yard and the page on the left, then a cell for each field, all two lines high. */
  private Drawn strip(Box box, String sheetOf) {
    List<Ink> inks = new ArrayList<>();
    double pitch = Type.pitch(type.body());
    double second = box.y() + CELL_GAP_MM + pitch;
    double height = 2 * pitch + 2 * CELL_GAP_MM;
    List<Field> fields =
        List.of(
            issue(),
            new Field("Paper, full size", paper),
            new Field("Scale", scale),
            new Field("Sheet", sheetOf));
    double cell = box.width() * STRIP_CELL_SHARE;
    double left = box.right() - fields.size() * cell;
    Box logo = firm.sized(LOGO_ON_STRIP_MM, height - 2 * CELL_GAP_MM);
    inks.addAll(firm.logoIn(logo.movedTo(box.x() + PADDING_MM, box.y() + CELL_GAP_MM)));
    double x = box.x() + PADDING_MM + (logo.width() > 0 ? logo.width() + PADDING_MM : 0);
    double room = left - x - PADDING_MM;
    List<String> name = shortened(type.wrap(orNone(info.title()), type.body(), true, room), 1);
    List<String> title = shortened(type.wrap(sheetTitle, type.body(), false, room), 1);
    inks.addAll(Type.lines(name, x, box.y() + CELL_GAP_MM, type.body(), true, Palette.INK));
    inks.addAll(Type.lines(title, x, second, type.body(), false, Palette.INK));
    for (int i = 0; i < fields.size(); i++) {
      double at = left + i * cell;
      inks.add(Ink.Path.line(RULE, new Xy(at, box.y()), new Xy(at, box.y() + height)));
      List<String> value =
          shortened(type.wrap(orNone(fields.get(i).value()), type.body(), false, cell - 3), 1);
      inks.add(
          Type.line(
              fields.get(i).caption(),
              at + 2,
              box.y() + CELL_GAP_MM,
              type.body(),
              false,
              Ink.Align.START,
              Palette.MUTED));
      inks.addAll(Type.lines(value, at + 2, second, type.body(), false, Palette.INK));
    }
    return new Drawn(inks, height);
  }

  /** Tells an old page to carry from a new one. */
  private Field issue() {
    return info.revised()
        .map(on -> new Field("Revision " + info.revision(), TableFormat.date(on)))
        .orElseGet(() -> new Field("Date", date()));
  }

  private double rows(List<Ink> inks, Box box, double top, String sheetOf) {
    String units = info.units() == UnitSystem.US ? "Feet, inches" : "Metres";
    double y =
        row(
            inks,
            box,
            top,
            new Field("Client", info.client()),
            new Field("Drawn by", info.author()));
    y = row(inks, box, y, new Field("Plan", info.id()), new Field("Paper, at full size", paper));
    y =
        row(
            inks,
            box,
            y,
            new Field("Date", date()),
            new Field("Revision", Say.revision(info)),
            new Field("Measures", units));
    return row(
        inks,
        box,
        y,
        new Field("Scale", scale),
        new Field("Approved", " "),
        new Field("Sheet", sheetOf));
  }

  private double row(List<Ink> inks, Box box, double y, Field... fields) {
    double cell = box.width() / fields.length;
    inks.add(Ink.Path.line(RULE, new Xy(box.x(), y), new Xy(box.right(), y)));
    double height = 0;
    for (int i = 0; i < fields.length; i++) {
      double x = box.x() + i * cell + (i == 0 ? PADDING_MM : 2);
      double room = cell - (i == 0 ? PADDING_MM : 2) - 1;
      inks.add(
          Type.line(
              fields[i].caption(),
              x,
              y + CELL_GAP_MM,
              type.body(),
              false,
              Ink.Align.START,
              Palette.MUTED));
      double top = y + CELL_GAP_MM + Type.pitch(type.body());
      List<String> value =
          shortened(type.wrap(orNone(fields[i].value()), type.heading(), false, room), 2);
      inks.addAll(Type.lines(value, x, top, type.heading(), false, Palette.INK));
      height =
          Math.max(
              height,
              Type.pitch(type.body())
                  + value.size() * Type.pitch(type.heading())
                  + 2 * CELL_GAP_MM);
    }
    for (int i = 1; i < fields.length; i++) {
      double x = box.x() + i * cell;
      inks.add(Ink.Path.line(RULE, new Xy(x, y), new Xy(x, y + height)));
    }
    return y + height;
  }

  /** As dates stand on the sheet, if it is one; else as the plan writes it. */
  private String date() {
    return info.issued().map(TableFormat::date).orElseGet(info::date);
  }

  private static String orNone(String value) {
    return value.isEmpty() ? NONE : value;
  }

  /** At most {@code most} lines; what is left out shows as dots. */
  private static List<String> shortened(List<String> lines, int most) {
    if (lines.size() <= most) {
      return lines;
    }
    List<String> kept = new ArrayList<>(lines.subList(0, most));
    String last = kept.get(most - 1);
    int end =
        last.offsetByCodePoints(
            last.length(), -Math.min(2, last.codePointCount(0, last.length()) - 1));
    kept.set(most - 1, last.substring(0, end) + "\u2026");
    return kept;
  }
}
