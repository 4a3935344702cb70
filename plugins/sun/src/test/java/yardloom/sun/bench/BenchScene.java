package yardloom.sun.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import yardloom.facts.Obstacle;
import yardloom.facts.Obstacle.Form;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.unit.Length;
import yardloom.sun.body.Ground;
import yardloom.sun.hours.CellGrid;
import yardloom.sun.shade.ShadeScene;

/** A lot of 40 by 25 m: house, shed, four walls and any number of trees; the same for both ways. */
final class BenchScene {
  static final double LATITUDE = 40;
  static final double LONGITUDE = -105;
  private static final double[] DECIDUOUS = {
    0.65, 0.65, 0.65, 0.425, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.635, 0.65
  };

  final List<Obstacle> obstacles = new ArrayList<>();
  final List<BruteForce.Blocker> blockers = new ArrayList<>();

  BenchScene(int trees) {
    box("house", 14, 8, 26, 17, 5.5);
    box("shed", 2, 20, 7, 24, 3);
    box("south wall", 0, 0, 40, 0.1, 1.8);
    box("north wall", 0, 24.9, 40, 25, 1.8);
    box("west wall", 0, 0.1, 0.1, 24.9, 1.8);
    box("east wall", 39.9, 0.1, 40, 24.9, 1.8);
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < trees; i++) {
      boolean small = i % 7 > 3;
      double x = random.nextDouble(1, 39);
      double y = random.nextDouble(1, 24);
      double radius = small ? random.nextDouble(0.5, 1) : random.nextDouble(1, 2.5);
      double top = small ? random.nextDouble(1.5, 3) : random.nextDouble(4, 9);
      crown("tree " + i, x, y, radius, top * 0.25, top);
    }
  }

  static CellGrid grid(double cellM) {
    return new CellGrid(0, 0, cellM, (int) Math.round(40 / cellM), (int) Math.round(25 / cellM));
  }

  /** Heights over the lot every 10 cm as an ASCII grid, for programs that work on rasters. */
  String raster() {
    CellGrid grid = grid(0.1);
    StringBuilder text = new StringBuilder();
    text.append("ncols ").append(grid.columns()).append("\nnrows ").append(grid.rows());
    text.append("\nxllcorner 500000\nyllcorner 4440000\ncellsize 0.1\nNODATA_value -9999\n");
    for (int row = grid.rows() - 1; row >= 0; row--) {
      for (int column = 0; column < grid.columns(); column++) {
        double heightM = 0;
        for (BruteForce.Blocker b : blockers) {
          heightM = Math.max(heightM, b.heightM(grid.xM(column), grid.yM(row)));
        }
        text.append(String.format(Locale.ROOT, column == 0 ? "%.2f" : " %.2f", heightM));
      }
      text.append('\n');
    }
    return text.toString();
  }

  ShadeScene scene() {
    return scene(obstacles);
  }

  static ShadeScene scene(List<Obstacle> of) {
    return new ShadeScene(Math.toRadians(LATITUDE), 0, Ground.LEVEL, List.of(), of);
  }

  private void box(String name, double x0, double y0, double x1, double y1, double top) {
    obstacles.add(
        new Obstacle(
            new ElementId(ElementKind.STRUCTURE, name),
            Form.PRISM,
            Shape.rectangle(Point.metres(x0, y0), Length.metres(x1 - x0), Length.metres(y1 - y0)),
            Length.ZERO,
            Length.metres(top),
            Collections.nCopies(12, 0.0)));
    blockers.add(new BruteForce.Box(x0, y0, x1, y1, top));
  }

  private void crown(String name, double x, double y, double radius, double base, double top) {
    obstacles.add(tree(name, x, y, radius, base, top));
    blockers.add(new BruteForce.Crown(x, y, (base + top) / 2, radius, (top - base) / 2, DECIDUOUS));
  }

  static Obstacle tree(String name, double x, double y, double radius, double base, double top) {
    return new Obstacle(
        new ElementId(ElementKind.TREE, name),
        Form.ELLIPSOID,
        Shape.circle(Point.metres(x, y), Length.metres(radius)),
        Length.metres(base),
        Length.metres(top),
        Arrays.stream(DECIDUOUS).boxed().toList());
  }
}
