package yardloom.sun.hours;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import yardloom.facts.Obstacle;
import yardloom.facts.Obstacle.Form;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.unit.Length;
import yardloom.sun.position.DayLength;
import yardloom.sun.position.SunYear;
import yardloom.sun.shade.Scenes;
import yardloom.sun.shade.ShadeScene;

/** What must hold for any scene. */
class EngineLawsTest {
  private static final DayGroups GROUPS = DayGroups.season(MonthDay.of(4, 1), MonthDay.of(9, 30));
  private static final SunYear YEAR = new SunYear(0);

  private static List<Obstacle> scatter(long seed, int count) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Obstacle> all = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double x = random.nextDouble(-12, 12);
      double y = random.nextDouble(-12, 12);
      double w = random.nextDouble(0.5, 5);
      double d = random.nextDouble(0.5, 5);
      double top = random.nextDouble(1, 9);
      Form form = Form.values()[random.nextInt(Form.values().length)];
      double base = form == Form.PRISM ? 0 : random.nextDouble(0, top * 0.6);
      double share = random.nextInt(2) * random.nextDouble(0.1, 0.9);
      all.add(
          new Obstacle(
              new ElementId(ElementKind.STRUCTURE, "s" + i),
              form,
              Scenes.rectangle(x, y, x + w, y + d),
              Length.metres(base),
              Length.metres(top),
              Collections.nCopies(12, share)));
    }
    return all;
  }

  private static ShadeScene scene(double latitude, List<Obstacle> obstacles) {
    return Scenes.scene(latitude, obstacles.toArray(new Obstacle[0]));
  }

  @Property(tries = 150, seed = "20261125")
  void oneMoreObstacle_neverAddsSun(
      @ForAll long seed,
      @ForAll @DoubleRange(min = -75, max = 75) double latitude,
      @ForAll @DoubleRange(min = -23, max = 23) double declination) {
    List<Obstacle> all = scatter(seed, 6);
    double fewer =
        Scenes.day(scene(latitude, all.subList(0, 5)), declination, 360, 0, 0).directHours();
    double more = Scenes.day(scene(latitude, all), declination, 360, 0, 0).directHours();
    assertTrue(more <= fewer + 1e-9, more + " > " + fewer);
  }

  @Property(tries = 150, seed = "20261125")
  void hours_neverExceedTheDay(
      @ForAll long seed,
      @ForAll @DoubleRange(min = -85, max = 85) double latitude,
      @ForAll @DoubleRange(min = -23, max = 23) double declination) {
    double day =
        24
            / Math.PI
            * DayLength.sunsetHourAngle(Math.toRadians(latitude), Math.toRadians(declination));
    DayLight light = Scenes.day(scene(latitude, scatter(seed, 4)), declination, 720, 0, 0);
    double step = 24.0 / 720;
    assertTrue(light.directHours() <= day + step);
    assertTrue(light.morningHours() <= day / 2 + step);
    assertTrue(light.longestHours() <= light.lastHour() - light.firstHour() + 1e-9);
    // Behind a thin crown the sun counts by what passes, in the longest spell too.
    assertTrue(light.longestHours() <= light.directHours() + 1e-9);
    assertTrue(light.lastHour() - light.firstHour() <= day + step);
    assertEquals(
        day, Scenes.day(scene(latitude, List.of()), declination, 720, 0, 0).directHours(), step);
  }

  /** What passes and what is taken add up: with share p, hours = open - (1 - p)·shaded. */
  @Property(tries = 100, seed = "20261125")
  void sunAndShade_addUpToTheDay(
      @ForAll long seed,
      @ForAll @DoubleRange(min = -70, max = 70) double latitude,
      @ForAll @DoubleRange(min = 0, max = 1) double share) {
    Obstacle it = scatter(seed, 1).get(0);
    double solid = Scenes.day(scene(latitude, List.of(with(it, 0))), 10, 360, 0, 0).directHours();
    double thin =
        Scenes.day(scene(latitude, List.of(with(it, share))), 10, 360, 0, 0).directHours();
    double open = Scenes.day(scene(latitude, List.of()), 10, 360, 0, 0).directHours();
    assertEquals(open - (1 - share) * (open - solid), thin, 1e-9);
  }

  private static Obstacle with(Obstacle o, double share) {
    return new Obstacle(
        o.of(), o.form(), o.footprint(), o.base(), o.top(), Collections.nCopies(12, share));
  }

  @Property(tries = 100, seed = "20261125")
  void mirroredScene_swapsMorningAndAfternoon(
      @ForAll long seed,
      @ForAll @DoubleRange(min = -70, max = 70) double latitude,
      @ForAll @DoubleRange(min = -23, max = 23) double declination) {
    List<Obstacle> all = scatter(seed, 4);
    List<Obstacle> mirrored = new ArrayList<>();
    for (Obstacle o : all) {
      Shape other = o.footprint().mirrored(Point.metres(0, 0), Point.metres(0, 1));
      mirrored.add(new Obstacle(o.of(), o.form(), other, o.base(), o.top(), o.passes()));
    }
    DayLight here = Scenes.day(scene(latitude, all), declination, 720, 0, 0);
    DayLight there = Scenes.day(scene(latitude, mirrored), declination, 720, 0, 0);
    double step = 24.0 / 720;
    // A vertex on a column belongs to one side: at most a column for each outline.
    assertEquals(here.directHours(), there.directHours(), 4 * step);
    assertEquals(here.morningHours(), there.directHours() - there.morningHours(), 4 * step);
  }

  /** Two ways to count must agree: all days at once, and one day after the other. */
  @Property(tries = 30, seed = "20261125")
  void yearAtOnce_equalsSumOfDays(
      @ForAll long seed, @ForAll @DoubleRange(min = -70, max = 70) double latitude) {
    SunEngine engine = new SunEngine(scene(latitude, scatter(seed, 8)), YEAR, 240);
    SunEngine.Looker looker = engine.looker(GROUPS, IntStream.range(0, SunYear.DAYS).toArray());
    looker.at(0.3, -0.2, 0, ShadeScene.NOBODY);
    double[] byDays = new double[DayGroups.GROUPS];
    double[] mornings = new double[DayGroups.GROUPS];
    for (int day = 0; day < SunYear.DAYS; day++) {
      DayLight light = looker.day(day);
      byDays[GROUPS.groupOfDay().get(day)] += light.directHours();
      mornings[GROUPS.groupOfDay().get(day)] += light.morningHours();
    }
    SunEngine.Sums sums = looker.sums();
    assertArrayEquals(byDays, sums.hours(), 1e-6);
    assertArrayEquals(mornings, sums.morningHours(), 1e-6);
  }

  @Test
  void oneThreadOrFour_giveTheSameBits() throws Exception {
    SunEngine engine = new SunEngine(scene(40, scatter(5, 12)), YEAR, 240);
    CellGrid grid = new CellGrid(-10, -10, 0.5, 40, 40);
    SunMap one =
        new ForkJoinPool(1)
            .submit(() -> SunMap.of(engine, grid, Cells.bare(grid.cells()), GROUPS))
            .get();
    SunMap four =
        new ForkJoinPool(4)
            .submit(() -> SunMap.of(engine, grid, Cells.bare(grid.cells()), GROUPS))
            .get();
    for (int i = 0; i < grid.cells(); i++) {
      for (int g = 0; g < DayGroups.GROUPS; g++) {
        assertEquals(one.hours(i, g), four.hours(i, g), 0.0);
      }
    }
  }

  /** One tree moved: the map follows to the last bit and leaves what the tree cannot touch. */
  @Property(tries = 8, seed = "20261125")
  void movedObstacle_recomputesOnlyWhatItTouches(
      @ForAll long seed, @ForAll @IntRange(min = 0, max = 9) int which) {
    List<Obstacle> before = scatter(seed, 10);
    Obstacle moved = before.get(which);
    List<Obstacle> after = new ArrayList<>(before);
    after.set(
        which,
        new Obstacle(
            moved.of(),
            moved.form(),
            moved.footprint().moved(Length.metres(2), Length.metres(-1)),
            moved.base(),
            moved.top(),
            moved.passes()));
    CellGrid grid = new CellGrid(-12, -12, 1, 24, 24);
    SunEngine changed = new SunEngine(scene(40, after), YEAR, 240);
    SunMap full = SunMap.of(changed, grid, Cells.bare(grid.cells()), GROUPS);
    SunMap followed =
        SunMap.of(
                new SunEngine(scene(40, before), YEAR, 240), grid, Cells.bare(grid.cells()), GROUPS)
            .after(changed, moved.of());
    for (int i = 0; i < grid.cells(); i++) {
      for (int g = 0; g < DayGroups.GROUPS; g++) {
        assertEquals(full.hours(i, g), followed.hours(i, g), 0.0);
      }
    }
    assertTrue(followed.workedOut() < grid.cells(), "some cells never see it against the sun");
  }
}
