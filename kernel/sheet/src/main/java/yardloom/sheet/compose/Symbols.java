package yardloom.sheet.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark.SymbolForm;
import yardloom.kernel.draw.Style;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Xy;

/**
 * Draws symbols and legend swatches.
 *
 * <p>A plant stands as a circle about its stem; the edge tells leaf-shedding (scalloped) from
 * evergreen (toothed, with spokes) also in black and white.
 */
final class Symbols {
  private static final double FIXED_MM = 3;
  private static final double CENTRE_MARK_MM = 0.8;
  private static final int EDGE_POINTS = 6;
  private static final int SPOKES = 8;

  private Symbols() {}

  /**
   * @param radiusMm half the true size on paper; only true-size forms use it
   * @param turnDegrees clockwise
   */
  static List<Ink> draw(SymbolForm form, Xy at, double radiusMm, double turnDegrees, Style style) {
    double r = FIXED_MM / 2;
    Style line = new Style(style.name(), "", Style.Hatch.NONE, edge(style), width(style), "");
    return switch (form) {
      case CROWN_DECIDUOUS -> crown(at, radiusMm, style, line, true);
      case CROWN_EVERGREEN -> crown(at, radiusMm, style, line, false);
      case DISC -> List.of(new Ink.Circle(at, radiusMm, style));
      case CROSS ->
          List.of(
              new Ink.Path(
                  List.of(track(at, turnDegrees, -r, 0, r, 0), track(at, turnDegrees, 0, -r, 0, r)),
                  line));
      case DOT -> List.of(new Ink.Circle(at, r / 2, style));
      case SQUARE -> List.of(closed(at, turnDegrees, style, -r, -r, r, -r, r, r, -r, r));
      case TRIANGLE -> List.of(closed(at, turnDegrees, style, 0, -r, r, r, -r, r));
      case TAP -> tap(at, style, line);
      case ARROW ->
          List.of(
              Ink.Path.line(line, turned(at, turnDegrees, 0, 2 * r), at),
              closed(at, turnDegrees, style, 0, -r, 0.5 * r, 0.3 * r, -0.5 * r, 0.3 * r));
    };
  }

  private static String edge(Style style) {
    return style.stroke().isEmpty() ? style.fill() : style.stroke();
  }

  private static double width(Style style) {
    return style.strokeMm() == 0 ? 0.25 : style.strokeMm();
  }

  private static List<Ink> tap(Xy at, Style style, Style line) {
    double r = FIXED_MM / 2;
    return List.of(
        new Ink.Circle(at, r, style),
        new Ink.Path(
            List.of(track(at, 0, -r, 0, -2 * r, 0), track(at, 0, -2 * r, -0.7, -2 * r, 0.7)),
            line));
  }

  private static List<Ink> crown(Xy at, double radius, Style style, Style line, boolean scallops) {
    int lobes = (int) Math.max(8, Math.min(36, Math.rint(2 * Math.PI * radius / 3)));
    double depth = Math.min(1.2, radius * (scallops ? 0.12 : 0.16));
    List<Xy> points = new ArrayList<>();
    for (int lobe = 0; lobe < lobes; lobe++) {
      int steps = scallops ? EDGE_POINTS : 2;
      for (int i = 0; i < steps; i++) {
        double part = (double) i / steps;
        // Scallops bulge outward between cusps; teeth alternate between two radii.
        double out = scallops ? StrictMath.sin(Math.PI * part) : i;
        points.add(polar(at, radius - depth + depth * out, (lobe + part) / lobes));
      }
    }
    double c = Math.min(CENTRE_MARK_MM, radius / 2);
    List<Ink.Track> inner = new ArrayList<>();
    inner.add(track(at, 0, -c, 0, c, 0));
    inner.add(track(at, 0, 0, -c, 0, c));
    for (int spoke = 0; spoke < SPOKES && !scallops; spoke++) {
      double turns = (spoke + 0.5) / SPOKES;
      inner.add(
          new Ink.Track(
              List.of(polar(at, radius * 0.5, turns), polar(at, radius * 0.8, turns)), false));
    }
    return List.of(
        new Ink.Path(List.of(new Ink.Track(points, true)), style), new Ink.Path(inner, line));
  }

  private static Xy polar(Xy centre, double radius, double turns) {
    double angle = 2 * Math.PI * turns;
    return centre.plus(radius * StrictMath.sin(angle), -radius * StrictMath.cos(angle));
  }

  private static Xy turned(Xy at, double degrees, double x, double y) {
    double sin = StrictMath.sin(StrictMath.toRadians(degrees));
    double cos = StrictMath.cos(StrictMath.toRadians(degrees));
    return at.plus(x * cos - y * sin, x * sin + y * cos);
  }

  private static Ink.Track track(Xy at, double degrees, double... xy) {
    List<Xy> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(turned(at, degrees, xy[i], xy[i + 1]));
    }
    return new Ink.Track(points, false);
  }

  private static Ink closed(Xy at, double degrees, Style style, double... xy) {
    return new Ink.Path(List.of(new Ink.Track(track(at, degrees, xy).points(), true)), style);
  }

  /** The sample that a legend shows. */
  static List<Ink> swatch(LegendEntry entry, Box box) {
    Style style = entry.style();
    if (entry.symbol().isPresent()) {
      double radius = box.height() / 2 - 0.2;
      List<Ink> inks = new ArrayList<>();
      entry.ring().ifPresent(ring -> inks.add(new Ink.Circle(box.centre(), radius, ring)));
      inks.addAll(draw(entry.symbol().get(), box.centre(), radius, 0, style));
      return inks;
    }
    if (entry.isLine()) {
      return List.of(sampleLine(style, box));
    }
    return List.of(Ink.Path.box(style, box));
  }

  /** A line that begins within its longest dash, so that a short sample shows the gaps too. */
  private static Ink sampleLine(Style style, Box box) {
    double y = box.centre().y();
    if (style.dash().isEmpty()) {
      return Ink.Path.line(style, new Xy(box.x(), y), new Xy(box.right(), y));
    }
    double[] dashes = Stream.of(style.dash().split(" ")).mapToDouble(Double::parseDouble).toArray();
    double period = DoubleStream.of(dashes).sum();
    double others = period - dashes[0];
    double x = period <= box.width() ? box.x() : box.x() - dashes[0] + (box.width() - others) / 2;
    List<Ink.Track> tracks = new ArrayList<>();
    for (int i = 0; x < box.right(); x += dashes[i++ % dashes.length]) {
      double from = Math.max(x, box.x());
      double to = Math.min(x + dashes[i % dashes.length], box.right());
      if (i % 2 == 0 && from < to) {
        tracks.add(new Ink.Track(List.of(new Xy(from, y), new Xy(to, y)), false));
      }
    }
    return new Ink.Path(
        tracks, Style.line(style.name() + "-sample", style.stroke(), style.strokeMm()));
  }
}
