package yardloom.water.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.Style;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.NameRuns;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.water.head.HeadAssembly;
import yardloom.water.head.HeadPart;
import yardloom.water.head.Supply;

/**
 * The head assembly as it is screwed together: the parts in the order in which water passes them,
 * with what each is for and what joins them; behind them a branch for each zone. A scheme, not to
 * scale; a unit of the figure is about a centimetre on paper.
 */
public final class HeadFigure {
  private static final double MM_A_UNIT = 10;
  private static final double COLUMN = 2.6;
  private static final double ROW = 1.4;
  private static final double TOP = 1.1;

  /** Half of what water comes from. */
  private static final double SOURCE = 0.3;

  private static final double TEXT_MM = 2;
  private static final double LINE = 0.32;
  private static final double GAP = 0.18;

  /** What goes into a column in letters of {@link #TEXT_MM}. */
  private static final int LETTERS = 17;

  /** More branches than these are drawn as the first and the last with their number. */
  private static final int MOST_BRANCHES = 5;

  private static final Style PIPE = Style.line("head-pipe", Palette.INK, 0.5);
  private static final Style FLOW = Style.filled("head-flow", Palette.INK);
  private static final Style PAPER = Style.filled("head-paper", Palette.PAPER);

  private final List<Mark> marks = new ArrayList<>();
  private final boolean isTank;
  private double lowest;
  private double widthMm;

  private HeadFigure(boolean isTank) {
    this.isTank = isTank;
  }

  /** The figure; empty where nothing is watered by lines. */
  public static Optional<Panel.Figure> of(Plan plan, Facts facts) {
    List<ZoneLine> zones = facts.all(ZoneLine.KEY);
    if (zones.isEmpty()) {
      return Optional.empty();
    }
    HeadFigure figure = new HeadFigure(Supply.isTank(plan));
    figure.draw(HeadAssembly.of(plan).parts(figure.isTank), zones, plan.info().units());
    return Optional.of(
        new Panel.Figure(
            "Head assembly, as it is joined (scheme, not to scale)",
            figure.marks,
            List.of(),
            figure.widthMm,
            0));
  }

  private void draw(List<HeadPart> parts, List<ZoneLine> zones, UnitSystem units) {
    List<HeadPart> common = parts.stream().filter(p -> !p.isInEachZone()).toList();
    List<HeadPart> each = parts.stream().filter(HeadPart::isInEachZone).toList();
    String joint = units == UnitSystem.US ? "3/4 in" : "G 3/4";
    double x = COLUMN / 2;
    double manifold = x + Math.max(common.size(), each.size() + 1) * COLUMN + COLUMN / 2;
    widthMm = MM_A_UNIT * (manifold + 0.3);
    source(x);
    stroke(x + SOURCE, 0, manifold, 0);
    int number = 0;
    for (HeadPart part : common) {
      number++;
      boolean isHose = number == 1 && !isTank && units == UnitSystem.US;
      text(x + COLUMN / 2, 0.5, isHose ? joint + " hose" : joint);
      x += COLUMN;
      arrow(x - COLUMN / 2, 0, 90);
      new HeadSymbol(marks, isTank).draw(part, x, 0);
      below(x, number + " " + part.name(), shortly(part), -0.8);
    }
    List<Branch> branches = branches(zones);
    double first = lowest - 1;
    double last = first - ROW * (branches.size() - 1);
    stroke(manifold, 0, manifold, last);
    for (int b = 0; b < branches.size(); b++) {
      branch(manifold, first - ROW * b, each, branches.get(b));
    }
    double at = manifold;
    for (HeadPart part : each) {
      number++;
      at -= COLUMN;
      below(at, number + " " + part.name(), shortly(part), last - 0.8);
    }
    // Texts stand within the bounds of what is drawn.
    marks.add(
        0,
        new Mark.Region(
            Shape.rectangle(
                Point.metres(0, lowest),
                Length.metres(manifold + 0.3),
                Length.metres(TOP - lowest)),
            PAPER,
            "ground of the figure"));
  }

  /** One line behind the manifold, or several that are alike. */
  private record Branch(String name, String tube) {}

  private static List<Branch> branches(List<ZoneLine> zones) {
    List<Branch> branches = new ArrayList<>();
    for (ZoneLine zone : zones) {
      branches.add(new Branch("Zone " + zone.number(), tube(zone)));
    }
    if (branches.size() > MOST_BRANCHES) {
      String between =
          NameRuns.text(
              zones.subList(1, zones.size() - 1).stream().map(z -> "Zone " + z.number()).toList());
      String tubes =
          NameRuns.text(
              branches.subList(1, branches.size() - 1).stream()
                  .map(Branch::tube)
                  .distinct()
                  .toList());
      return List.of(
          branches.get(0),
          new Branch(between + ", each", tubes),
          branches.get(branches.size() - 1));
    }
    return branches;
  }

  private static String tube(ZoneLine zone) {
    return zone.runs().isEmpty()
        ? ""
        : zone.runs().get(0).size().name() + " " + zone.runs().get(0).size().tube();
  }

  /** Back to the left, below the names of what all zones share. */
  private void branch(double fromX, double y, List<HeadPart> parts, Branch branch) {
    double end = fromX - (parts.size() + 0.7) * COLUMN;
    stroke(fromX, y, end, y);
    double x = fromX;
    for (HeadPart part : parts) {
      x -= COLUMN;
      new HeadSymbol(marks, isTank).draw(part, x, y);
    }
    arrow(end, y, -90);
    label(end - 1.6, y + 0.25, branch.name(), true);
    text(end - 1.6, y - 0.25, branch.tube());
  }

  /** Where water comes from. */
  private void source(double x) {
    if (isTank) {
      marks.add(
          new Mark.Region(
              Shape.rectangle(
                  Point.metres(x - 3 * SOURCE, -0.4),
                  Length.metres(4 * SOURCE),
                  Length.metres(1.4)),
              Style.filled("head-tank", Palette.SHADE).outlined(Palette.INK, 0.35),
              "foot of the tank"));
      below(x, "tank", "its foot, below the stop level", -0.8);
    } else {
      marks.add(
          new Mark.Symbol(
              Point.metres(x, 0),
              Mark.SymbolForm.TAP,
              Length.ZERO,
              Angle.ZERO,
              Palette.WATER_POINT,
              "tap"));
      below(x, "tap", "", -0.8);
    }
  }

  private void below(double x, String name, String purpose, double y) {
    double at = stacked(x, y, wrapped(name), true);
    at = stacked(x, at, wrapped(purpose), false);
    lowest = Math.min(lowest, at);
  }

  /** One text of several lines, the first at {@code y}; gives where the next begins. */
  private double stacked(double x, double y, List<String> lines, boolean isBold) {
    label(x, y - LINE * (lines.size() - 1) / 2, String.join("\n", lines), isBold);
    return y - LINE * lines.size() - GAP;
  }

  /** What it is for; what else is said of it stands in the table. */
  private static String shortly(HeadPart part) {
    return part.purpose().split(";")[0];
  }

  private static List<String> wrapped(String text) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.isEmpty() ? new String[0] : text.split(" ")) {
      if (!line.isEmpty() && line.length() + 1 + word.length() > LETTERS) {
        lines.add(line);
        line = "";
      }
      line = line.isEmpty() ? word : line + " " + word;
    }
    if (!line.isEmpty()) {
      lines.add(line);
    }
    return lines;
  }

  private void stroke(double fromX, double fromY, double toX, double toY) {
    if (fromX != toX || fromY != toY) {
      marks.add(
          new Mark.Stroke(
              Line.between(Point.metres(fromX, fromY), Point.metres(toX, toY)), PIPE, "pipe"));
    }
  }

  private void arrow(double x, double y, double turn) {
    marks.add(
        new Mark.Symbol(
            Point.metres(x, y),
            Mark.SymbolForm.ARROW,
            Length.ZERO,
            Angle.degrees(turn),
            FLOW,
            "way of the water"));
  }

  private void text(double x, double y, String text) {
    label(x, y, text, false);
  }

  private void label(double x, double y, String text, boolean isBold) {
    if (!text.isEmpty()) {
      marks.add(new Mark.Label(Point.metres(x, y), text, TEXT_MM, isBold, 1, Mark.Anchor.FIXED));
    }
  }
}
