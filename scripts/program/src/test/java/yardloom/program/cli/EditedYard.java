package yardloom.program.cli;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A small invented yard that is edited, as plan text. */
final class EditedYard {
  /** What may be done to it. */
  enum Edit {
    COMMENT,
    BLANK_LINE_GONE,
    MOVE_BED,
    RESIZE_BED,
    OTHER_PLANT,
    ADD_BED,
    ADD_TREE,
    REMOVE_TREE,
    RENAME_BED,
    RENAME_PLAN,
    CLIMATE,
    FROST,
    PARAMETER,
    HOUSE,
    ORDER,
    NOTHING
  }

  private static final List<String> CLIMATES = List.of("urbana-il", "seattle-wa");
  private static final List<String> PLANTS = List.of("tomato", "kale", "carrot");

  private String title = "Edited";
  private String kitchen = "Kitchen";
  private String climate = CLIMATES.get(0);
  private String plant = PLANTS.get(0);
  private int frostDay = 21;
  private double bedX = 5;
  private double bedDepth = 8;
  private double wide = 4;
  private double houseRidge = 14;
  private boolean turned;
  private final boolean inStages;
  private final List<Integer> trees = new ArrayList<>(List.of(8));
  private final List<Integer> beds = new ArrayList<>();
  private final List<Integer> comments = new ArrayList<>();

  EditedYard() {
    this(false);
  }

  /**
   * A yard.
   *
   * @param inStages whether its berries are planted in the second year
   */
  EditedYard(boolean inStages) {
    this.inStages = inStages;
  }

  /** Does one thing to it; {@code by} is a number from 0 to 9. */
  void edit(Edit edit, int by) {
    switch (edit) {
      case COMMENT -> comments.add(by);
      case BLANK_LINE_GONE -> comments.remove((Integer) by);
      case MOVE_BED -> bedX = 3 + by * 0.5;
      case RESIZE_BED -> bedDepth = 6 + by * 0.7;
      case OTHER_PLANT -> plant = PLANTS.get(by % PLANTS.size());
      case ADD_BED -> beds.add(beds.size());
      case ADD_TREE -> trees.add(11 + by);
      case REMOVE_TREE -> trees.remove(by % trees.size());
      case RENAME_BED -> kitchen = "Kitchen " + by;
      case RENAME_PLAN -> title = "Edited " + by;
      case CLIMATE -> climate = CLIMATES.get(by % CLIMATES.size());
      case FROST -> frostDay = 10 + by;
      case PARAMETER -> wide = 3 + by * 0.25;
      case HOUSE -> houseRidge = 12 + by * 0.5;
      case ORDER -> turned = !turned;
      case NOTHING -> {}
    }
    if (trees.isEmpty()) {
      trees.add(9);
    }
  }

  /** The plan as it stands. */
  String text() {
    List<String> said = new ArrayList<>();
    said.add("climate '" + climate + "'");
    said.add("frost last: '04-" + frostDay + "', first: '10-14', source: 'by hand'");
    said.add("hardinessZone '6a', source: 'by hand'");
    said.add("soilTexture 'silt loam', organic: 3");
    said.add(
        "lot([point(0.ft, 0.ft), point(34.ft, 0.ft), point(34.ft, 50.ft), point(0.ft, 50.ft)])");
    said.add(
        "building 'house', rect(8.ft, 34.ft, 18.ft, 12.ft), eaves: 9.ft, ridge: "
            + houseRidge
            + ".ft, roof: 'gable'");
    said.add("tap 'bib', point(8.ft, 33.ft), source: 'mains'");
    said.add(
        "sheetMulch { chips perennial: 8.inch, annual: 2.inch, path: 4.inch"
            + " ; compost annual: 3.inch }");
    said.add("path 'walk', line([point(17.ft, 2.ft), point(17.ft, 32.ft)]), width: 3.ft");
    said.add(
        "bed('"
            + kitchen
            + "', rect(20.ft, 20.ft, 4.ft, 10.ft), use: 'annual') {\n  plant '"
            + plant
            + "'\n  drip emitter: 0.4.gph, spacing: 12.inch, rowSpacing: 16.inch\n}");
    said.add(
        (inStages ? "stage('second year', from: '2027-03-06') { " : "")
            + "bed('Berries', rect("
            + bedX
            + ".ft, 20.ft, wide, "
            + bedDepth
            + ".ft), use: 'perennial') {\n  plant 'garden strawberry'\n}"
            + (inStages ? " }" : ""));
    for (int bed : beds) {
      said.add(
          "bed 'More "
              + bed
              + "', rect(26.ft, "
              + (2 + 3 * bed)
              + ".ft, 5.ft, 2.ft), use: 'perennial'");
    }
    for (int tree : trees) {
      said.add(
          "tree 'Plum "
              + tree
              + "', point("
              + tree
              + ".ft, 8.ft), crown: 9.ft, height: 11.ft, leaf: 'deciduous', standing: true");
    }
    if (turned) {
      Collections.reverse(said);
    }
    comments.forEach(c -> said.add(Math.min(c, said.size()), "// said " + c));
    return "plan '"
        + title
        + "', units: 'us', date: '2026-03-01'\n"
        + "site 'Urbana, Illinois', latitude: 40.11.deg, longitude: -88.21.deg, elevation: 222.m,"
        + " zone: 'America/Chicago'\n"
        + "def wide = param('wide', "
        + wide
        + ".ft, 'width of the berry bed')\n"
        + String.join("\n", said)
        + "\n";
  }
}
