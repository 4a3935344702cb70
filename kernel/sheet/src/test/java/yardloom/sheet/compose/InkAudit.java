package yardloom.sheet.compose;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.draw.TextMetrics;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Quad;

/**
 * Looks over a composed sheet as a careful reader would: no two texts overlap, every text and line
 * stays inside the frame, no letters are lower than 2 mm.
 */
public final class InkAudit {
  private static final double LEAST_HEIGHT_MM = 2;

  private InkAudit() {}

  /** What is wrong with the sheet; empty if nothing is. */
  public static List<String> problems(ComposedSheet sheet, TextMetrics metrics) {
    List<String> problems = new ArrayList<>();
    List<Ink.Text> texts = new ArrayList<>();
    Box frame = sheet.paper().frame();
    sheet.inks().forEach(ink -> collect(ink, frame.inset(-0.5), texts, problems));
    List<Quad> rooms = texts.stream().map(t -> t.room(metrics)).toList();
    for (int i = 0; i < texts.size(); i++) {
      if (texts.get(i).heightMm() < LEAST_HEIGHT_MM) {
        problems.add("too low: " + texts.get(i));
      }
      if (!rooms.get(i).inside(frame)) {
        problems.add("outside the frame: " + texts.get(i));
      }
      for (int j = 0; j < i; j++) {
        if (rooms.get(i).overlaps(rooms.get(j))) {
          problems.add("overlap: " + texts.get(i) + " and " + texts.get(j));
        }
      }
    }
    return problems;
  }

  /** Texts through which a dimension line or one of its extension lines runs. */
  public static List<String> textsOnMeasures(ComposedSheet sheet, TextMetrics metrics) {
    List<Ink.Track> lines = new ArrayList<>();
    sheet.inks().forEach(ink -> measures(ink, lines));
    List<String> crossed = new ArrayList<>();
    for (Ink.Text text : texts(sheet)) {
      Quad room = text.room(metrics);
      lines.stream()
          .filter(l -> room.crossedBy(l.points().get(0), l.points().get(1)))
          .forEach(l -> crossed.add(text.content() + " at " + text.at() + " on " + l));
    }
    return crossed;
  }

  private static void measures(Ink ink, List<Ink.Track> lines) {
    if (ink instanceof Ink.Group group) {
      group.inks().forEach(i -> measures(i, lines));
    } else if (ink instanceof Ink.Path path && path.style().name().equals("dimension")) {
      lines.addAll(path.tracks());
    }
  }

  /** All texts of the sheet, from the first drawn to the last. */
  public static List<Ink.Text> texts(ComposedSheet sheet) {
    List<Ink.Text> texts = new ArrayList<>();
    sheet.inks().forEach(ink -> collect(ink, null, texts, new ArrayList<>()));
    return texts;
  }

  private static void collect(Ink ink, Box bounds, List<Ink.Text> texts, List<String> problems) {
    if (ink instanceof Ink.Text text) {
      texts.add(text);
    } else if (ink instanceof Ink.Group group) {
      // A clip keeps its members inside, so only the clip itself is checked.
      boolean clipped = group.clip().isPresent();
      if (clipped && bounds != null && !Quad.of(group.clip().get()).inside(bounds)) {
        problems.add("clip outside the frame: " + group.clip().get());
      }
      group.inks().forEach(i -> collect(i, clipped ? null : bounds, texts, problems));
    } else if (ink instanceof Ink.Path path && bounds != null) {
      path.tracks().stream()
          .flatMap(t -> t.points().stream())
          .filter(p -> !bounds.contains(p))
          .findFirst()
          .ifPresent(p -> problems.add(path.style().name() + " outside the frame at " + p));
    }
  }
}
