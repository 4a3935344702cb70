package yardloom.sheet.label;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import yardloom.sheet.label.Linework.Kind;
import yardloom.sheet.label.Linework.Segment;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Quad;
import yardloom.sheet.paper.Xy;

/** Against all segments, asked one after the other; some run far out of the drawing. */
class SegmentGridTest {
  private static final Box AREA = new Box(10, 20, 90, 60);

  private static Xy anywhere(Random random) {
    return new Xy(-20 + 150 * random.nextDouble(), -10 + 120 * random.nextDouble());
  }

  private static Segment segment(Random random) {
    Xy from = anywhere(random);
    Xy to =
        switch (random.nextInt(4)) {
          case 0 -> anywhere(random);
          case 1 -> from.plus(0, 30 * random.nextDouble());
          case 2 -> from.plus(30 * random.nextDouble(), 0);
          default -> from.plus(8 * random.nextDouble(), -8 * random.nextDouble());
        };
    return new Segment(from, to, Kind.OUTLINE);
  }

  private static List<Segment> segments(Random random) {
    List<Segment> segments = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      segments.add(segment(random));
    }
    return segments;
  }

  @Property(tries = 300)
  void line_anywhere_isToldOnceOfEachThatCrossesIt(@ForAll long seed) {
    Random random = new Random(seed);
    List<Segment> segments = segments(random);
    Segment line = segment(random);
    List<Segment> told = new ArrayList<>();
    new SegmentGrid(AREA, segments).along(line.from(), line.to(), told::add);
    Set<Segment> once = new HashSet<>(told);
    assertEquals(once.size(), told.size());
    for (Segment s : segments) {
      boolean crosses = Quad.isCrossing(line.from(), line.to(), s.from(), s.to());
      assertTrue(!crosses || once.contains(s), line + " crosses " + s);
    }
  }

  @Property(tries = 300)
  void rectangle_anywhere_isToldOfThoseWhoseBoundsMeetIt(@ForAll long seed) {
    Random random = new Random(seed);
    List<Segment> segments = segments(random);
    Segment across = segment(random);
    Set<Segment> told = new HashSet<>();
    new SegmentGrid(AREA, segments)
        .near(across.left(), across.top(), across.right(), across.bottom(), told::add);
    Set<Segment> meeting = new HashSet<>(segments);
    meeting.removeIf(
        s ->
            s.left() > across.right()
                || s.right() < across.left()
                || s.top() > across.bottom()
                || s.bottom() < across.top());
    assertEquals(meeting, told);
  }
}
