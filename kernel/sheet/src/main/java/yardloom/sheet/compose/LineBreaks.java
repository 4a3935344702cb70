package yardloom.sheet.compose;

import java.util.ArrayList;
import java.util.List;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Quad;
import yardloom.sheet.paper.Xy;

/**
 * Breaks thin lines where a text stands on them, so that none is read as a hyphen or struck out.
 *
 * <p>References: [1] M. Cyrus, J. Beck, Generalized two- and three-dimensional clipping, Computers
 * and Graphics 3(1), 1978, pp. 23-28 (from memory): a line against a convex outline.
 */
final class LineBreaks {
  /** Stronger lines, such as headers and pipe in trenches, run on under a text. */
  private static final double THIN_MM = 0.25;

  private LineBreaks() {}

  /** The same ink with the thin open lines in it left out where {@code texts} stand. */
  static Ink under(List<Quad> texts, Ink ink) {
    if (ink instanceof Ink.Group group) {
      List<Ink> members =
          group.inks().stream()
              .map(i -> under(texts, i))
              .filter(i -> !(i instanceof Ink.Path path) || !path.tracks().isEmpty())
              .toList();
      return new Ink.Group(group.name(), group.title(), group.clip(), members);
    }
    if (ink instanceof Ink.Path path
        && path.style().fill().isEmpty()
        && path.style().strokeMm() <= THIN_MM) {
      List<Ink.Track> left = new ArrayList<>();
      path.tracks().forEach(t -> left.addAll(t.closed() ? List.of(t) : broken(t, texts)));
      return new Ink.Path(left, path.style());
    }
    return ink;
  }

  private static List<Ink.Track> broken(Ink.Track track, List<Quad> texts) {
    List<Ink.Track> left = List.of(track);
    for (Quad text : texts) {
      List<Ink.Track> next = new ArrayList<>();
      left.forEach(t -> next.addAll(broken(t, text)));
      left = next;
    }
    return left;
  }

  private static List<Ink.Track> broken(Ink.Track track, Quad text) {
    List<Xy> points = track.points();
    List<Ink.Track> left = new ArrayList<>();
    List<Xy> run = new ArrayList<>(points.subList(0, 1));
    for (int i = 1; i < points.size(); i++) {
      Xy from = points.get(i - 1);
      Xy to = points.get(i);
      double[] within = text.crossedBy(from, to) ? within(from, to, text) : new double[] {0, 0};
      if (within[0] < within[1]) {
        run.add(from.towards(to, within[0]));
        end(run, left);
        run = new ArrayList<>(List.of(from.towards(to, within[1])));
      }
      run.add(to);
    }
    end(run, left);
    return left;
  }

  /** What is left of a run has some length. */
  private static void end(List<Xy> run, List<Ink.Track> left) {
    if (run.size() > 1 && run.stream().anyMatch(p -> p.distance(run.get(0)) > 1e-9)) {
      left.add(new Ink.Track(run, false));
    }
  }

  /** The shares of the segment at which it enters the text's room and leaves it [1]. */
  private static double[] within(Xy from, Xy to, Quad text) {
    List<Xy> corners = text.corners();
    double enter = 0;
    double leave = 1;
    for (int i = 0; i < corners.size(); i++) {
      Xy a = corners.get(i);
      Xy b = corners.get((i + 1) % corners.size());
      double start = Quad.separation(a, b, from);
      double end = Quad.separation(a, b, to);
      if (start < 0 && end < 0) {
        return new double[] {0, 0};
      }
      if (start < 0) {
        enter = Math.max(enter, start / (start - end));
      } else if (end < 0) {
        leave = Math.min(leave, start / (start - end));
      }
    }
    return new double[] {enter, leave};
  }
}
