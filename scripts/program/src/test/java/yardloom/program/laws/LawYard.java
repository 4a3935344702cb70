package yardloom.program.laws;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;

/**
 * A small invented yard with every trade in it, as plan text. Lengths of the ground can be scaled,
 * turned, mirrored and said in feet or metres; depths, spacings and plants stay what they are.
 */
final class LawYard {
  private static final double FOOT_M = 0.3048;

  private static final String GREENS = "  plant 'kale', share: 0.6\n  plant 'tomato', share: 0.4\n";
  private static final List<String> SIDES = List.of("south", "east", "north", "west");

  private double scale = 1;
  private double turnDeg;
  private double northDeg;
  private boolean isMirrored;
  private boolean isMetric;
  private boolean isPlanted = true;
  private String climate = "climate 'urbana-il'";
  private String start = "2026-10-05";
  private double[][] greens = {{6, 36, 12, 4}};
  private final List<String> more = new ArrayList<>();

  /** Times as large on the ground. */
  LawYard scaled(double by) {
    scale = by;
    return this;
  }

  /** Everything turned clockwise on the paper; north is where it is said to be. */
  LawYard turned(double clockwiseDeg, double north) {
    turnDeg = clockwiseDeg;
    northDeg = north;
    return this;
  }

  /** East and west changed. */
  LawYard mirrored() {
    isMirrored = true;
    return this;
  }

  /** Said in metres, millimetres and litres. */
  LawYard metric() {
    isMetric = true;
    return this;
  }

  /** Without plants, whose size is the plants' own. */
  LawYard bare() {
    isPlanted = false;
    return this;
  }

  LawYard climate(String statement) {
    climate = statement;
    return this;
  }

  LawYard start(String day) {
    start = day;
    return this;
  }

  /** The annual beds instead of the one, as x, y, width and depth in feet. */
  LawYard greens(double[]... beds) {
    greens = beds;
    return this;
  }

  LawYard with(String statement) {
    more.add(statement);
    return this;
  }

  private String length(double feet) {
    double scaled = scale * feet;
    return isMetric
        ? String.format(Locale.ROOT, "%.12f.m", scaled * FOOT_M)
        : String.format(Locale.ROOT, "%.12f.ft", scaled);
  }

  private String inch(double inches) {
    return isMetric
        ? String.format(Locale.ROOT, "%.6f.mm", inches * 25.4)
        : String.format(Locale.ROOT, "%.6f.inch", inches);
  }

  private String flow(double gph) {
    return isMetric ? String.format(Locale.ROOT, "%.9f.lph", gph * 3.785411784) : gph + ".gph";
  }

  private String point(double x, double y) {
    double east = isMirrored ? -x : x;
    double turn = Math.toRadians(-turnDeg);
    return "point("
        + length(east * Math.cos(turn) - y * Math.sin(turn))
        + ", "
        + length(east * Math.sin(turn) + y * Math.cos(turn))
        + ")";
  }

  private String line(double... xy) {
    return "line([" + points(xy) + "])";
  }

  private String points(double... xy) {
    List<String> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(point(xy[i], xy[i + 1]));
    }
    return String.join(", ", points);
  }

  private String box(double x, double y, double width, double depth) {
    return "polygon([" + points(x, y, x + width, y, x + width, y + depth, x, y + depth) + "])";
  }

  private String bed(String name, double[] box, String use, String plants) {
    return "bed('"
        + name
        + "', "
        + box(box[0], box[1], box[2], box[3])
        + ", use: '"
        + use
        + "') {\n  drip emitter: "
        + flow(0.6)
        + ", spacing: "
        + inch(12)
        + ", rowSpacing: "
        + inch(16)
        + "\n"
        + (isPlanted ? plants : "")
        + "}";
  }

  /** The statements behind the plan's own, any of which may stand before another. */
  List<String> statements() {
    List<String> all = new ArrayList<>();
    all.add(climate);
    all.add("frost last: '04-25', first: '10-14', source: 'by hand'");
    all.add("hardinessZone '6a', source: 'by hand'");
    all.add("formerLawn 'cool season'");
    all.add("siteAddress '12 Sample Street'");
    all.add("soilTexture 'silt loam', organic: 3");
    all.add(
        "lot(["
            + points(0, 0, 50, 0, 50, 64, 0, 64)
            + "]) {\n"
            + side(0, "front", 18)
            + side(1, "side", 5)
            + side(2, "rear", 9)
            + side(3, "side", 4)
            + "}");
    all.add(
        "building 'house', "
            + box(9, 12, 30, 20)
            + ", eaves: "
            + length(10)
            + ", ridge: "
            + length(17)
            + ", overhang: "
            + length(1)
            + ", roof: 'gable'");
    all.add("roof 'rear slope', " + box(8, 22, 32, 11) + ", surface: 'metal'");
    all.add("paving 'drive', " + box(40.5, 0, 9, 34) + ", surface: 'concrete'");
    all.add("dropZone 'drive', " + box(41, 1, 8, 32) + ", access: " + length(9));
    all.add("gate 'drive gate', " + point(45, 33.5));
    all.add("tap 'hose bib', " + point(20, 32) + ", source: 'mains'");
    all.add(
        "fence 'back fence', " + line(0.5, 40, 0.5, 63.5, 49.5, 63.5) + ", height: " + length(6));
    all.add(
        "utility 'gas line', "
            + line(3, 0, 3, 14, 9, 14)
            + ", carries: 'gas', clearance: "
            + length(2));
    all.add(
        "tree('apple', "
            + point(40, 55)
            + ", crown: "
            + length(10)
            + ", height: "
            + length(11)
            + ")"
            + (isPlanted ? " { species 'apple (semi-dwarf)' }" : ""));
    all.add(
        "path 'cross path', "
            + line(45, 34, 45, 42, 4, 42)
            + ", width: "
            + length(3)
            + ", use: 'barrow'");
    all.add(
        "sheetMulch { chips perennial: "
            + inch(11)
            + ", annual: "
            + inch(2)
            + ", path: "
            + inch(4)
            + " ; compost annual: "
            + inch(3)
            + " }");
    all.add("demonstrationPrices()");
    all.add("lightScheme 'temperate'");
    all.add("sunGrid " + length(1));
    all.add("work crew: 2, hoursPerDay: 6, start: '" + start + "'");
    for (int i = 0; i < greens.length; i++) {
      all.add(bed(i == 0 ? "greens" : "more greens", greens[i], "annual", GREENS));
    }
    all.add(bed("berries", new double[] {6, 44, 4, 16}, "perennial", "  plant 'red raspberry'\n"));
    all.add(
        bed(
            "crowns",
            new double[] {14, 44.5, 5, 14},
            "perennial",
            "  plant 'asparagus', share: 0.7\n  plant 'garden strawberry', share: 0.3\n"));
    all.addAll(more);
    return all;
  }

  /** Sides are called by where they lie on the paper. */
  private String side(int from, String role, double setback) {
    int flipped = isMirrored && from % 2 == 1 ? 4 - from : from;
    int quarters = (int) Math.round(turnDeg / 90);
    return "  side '"
        + SIDES.get(Math.floorMod(flipped - quarters, 4))
        + "', role: '"
        + role
        + "', setback: "
        + length(setback)
        + ", rule: 'by hand'\n";
  }

  String head() {
    return "plan 'Law yard', units: '"
        + (isMetric ? "metric" : "us")
        + "'\nsite 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, elevation: 222.m,"
        + " zone: 'America/Chicago', north: "
        + northDeg
        + ".deg\n";
  }

  String script() {
    return script(statements());
  }

  private String script(List<String> statements) {
    return head() + statements.stream().collect(Collectors.joining("\n")) + "\n";
  }

  /** The same statements in another order, one for each seed. */
  String shuffled(long seed) {
    List<String> statements = new ArrayList<>(statements());
    Collections.shuffle(statements, new Random(seed));
    return script(statements);
  }
}
