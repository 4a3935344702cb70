package yardloom.program.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Xy;

/** The points that a set's maps set out by tapes, and whether their numbers stand beside them. */
final class PointNumbers {
  private static final Pattern POINT = Pattern.compile("point ([0-9]+) of .*");

  /** A number further off is read as another point's. */
  private static final double BESIDE_MM = 20;

  private record Dot(String number, Xy at) {}

  private PointNumbers() {}

  /** The numbers of all points that are drawn. */
  static Set<String> drawn(List<ComposedSheet> sheets) {
    Set<String> numbers = new TreeSet<>();
    sheets.forEach(s -> dots(s).forEach(d -> numbers.add(d.number())));
    return numbers;
  }

  /** Those that are drawn, on whatever map, without their number beside them. */
  static Set<String> missing(List<ComposedSheet> sheets) {
    Set<String> missing = drawn(sheets);
    for (ComposedSheet sheet : sheets) {
      List<Ink.Text> texts = new ArrayList<>();
      sheet.inks().forEach(i -> texts(i, texts));
      for (Dot dot : dots(sheet)) {
        if (texts.stream()
            .anyMatch(
                t -> t.content().equals(dot.number()) && t.at().distance(dot.at()) < BESIDE_MM)) {
          missing.remove(dot.number());
        }
      }
    }
    return missing;
  }

  private static List<Dot> dots(ComposedSheet sheet) {
    List<Dot> dots = new ArrayList<>();
    sheet.inks().forEach(i -> dots(i, dots));
    return dots;
  }

  private static void dots(Ink ink, List<Dot> dots) {
    if (!(ink instanceof Ink.Group group)) {
      return;
    }
    Matcher point = POINT.matcher(group.title());
    if (point.matches()) {
      for (Ink i : group.inks()) {
        if (i instanceof Ink.Circle circle) {
          dots.add(new Dot(point.group(1), circle.centre()));
        }
      }
    }
    group.inks().forEach(i -> dots(i, dots));
  }

  private static void texts(Ink ink, List<Ink.Text> texts) {
    if (ink instanceof Ink.Group group) {
      group.inks().forEach(i -> texts(i, texts));
    } else if (ink instanceof Ink.Text text) {
      texts.add(text);
    }
  }
}
