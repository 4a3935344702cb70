package yardloom.program.compare;

import java.util.Locale;
import java.util.Optional;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;

/** Changes of elements in words, in the plan's units. */
final class ThingWords {
  private final TableFormat format;

  ThingWords(TableFormat format) {
    this.format = format;
  }

  /** Such as {@code resized}. */
  static String how(ThingChange change) {
    return change.how().name().toLowerCase(Locale.ROOT);
  }

  /** The name, and after a rename both. */
  static String what(ThingChange change) {
    return change.how() == ThingChange.How.RENAMED
        ? change.old().orElseThrow().id() + " is now \"" + change.thing().name() + "\""
        : change.thing().id();
  }

  /** What there was; empty if it is told by the difference. */
  String old(ThingChange change) {
    return change.how() == ThingChange.How.RENAMED
        ? change.old().orElseThrow().name()
        : area(change, change.old());
  }

  /** What there is. */
  String now(ThingChange change) {
    return change.how() == ThingChange.How.RENAMED
        ? change.thing().name()
        : area(change, change.now());
  }

  private String area(ThingChange change, Optional<Thing> thing) {
    boolean tells = change.how() != ThingChange.How.MOVED;
    return thing
        .filter(t -> tells && !t.shape().isEmpty())
        .map(t -> format.withUnit(Measure.AREA, t.shape().area()))
        .orElse("");
  }

  /** The change of area and the way it moved. */
  String difference(ThingChange change) {
    String how = how(change);
    if (change.how() == ThingChange.How.RESIZED) {
      Area was = change.old().orElseThrow().shape().area();
      Area is = change.now().orElseThrow().shape().area();
      double m2 = is.squareMetres() - was.squareMetres();
      how = (m2 < 0 ? "−" : "+") + format.withUnit(Measure.AREA, Area.squareMetres(Math.abs(m2)));
    }
    if (!change.isMoved() || change.how() == ThingChange.How.RENAMED) {
      return how;
    }
    return change.how() == ThingChange.How.MOVED
        ? how + " " + way(change)
        : how + ", middle " + way(change);
  }

  private String way(ThingChange change) {
    String east = part(change.east(), "east", "west");
    String north = part(change.north(), "north", "south");
    double m = Math.hypot(change.east().metres(), change.north().metres());
    if (east.isEmpty() && north.isEmpty()) {
      // The last digit shown: 0.0 ft becomes 0.1 ft.
      return "less than " + show(Length.metres(0)).replaceFirst("0(\\D*)$", "1$1");
    }
    return east.isEmpty() || north.isEmpty()
        ? east + north
        : east + ", " + north + " (" + show(Length.metres(m)) + ")";
  }

  private String part(Length by, String positive, String negative) {
    String shown = show(Length.metres(Math.abs(by.metres())));
    boolean isNothing = shown.matches("0[.0]*+\\D.*");
    return isNothing ? "" : shown + " " + (by.metres() > 0 ? positive : negative);
  }

  private String show(Length length) {
    return format.withUnit(Measure.LENGTH, length);
  }
}
