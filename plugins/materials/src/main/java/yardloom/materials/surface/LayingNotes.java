package yardloom.materials.surface;

import java.util.ArrayList;
import java.util.List;
import yardloom.facts.mulch.Material;
import yardloom.facts.mulch.MulchSurface;

/**
 * In which order the layers of a plan are laid, in sentences. Trees are planted first, or through
 * the cover where their season comes later: which of both, the days of the phases say.
 */
public final class LayingNotes {
  private LayingNotes() {}

  /** Whether any surface has dripline in it. */
  public static boolean hasDrip(List<MulchSurface> surfaces) {
    return surfaces.stream()
        .flatMap(s -> s.courses().stream())
        .anyMatch(course -> course.material().equals(Material.DRIPLINE));
  }

  /** What whoever lays the mulch has to do. */
  public static List<String> steps(boolean cardboard, boolean drip) {
    List<String> steps = new ArrayList<>();
    if (cardboard) {
      steps.add("Mow low, remove tough weeds, water. Do not till.");
      steps.add(
          "Cardboard without tape, staples or gloss, lapped, wetted, covered the same day: paths"
              + " with all their chips, beds with compost or a first lift.");
    } else {
      steps.add("Remove weeds with their roots, water. Do not till.");
      steps.add("Paths get all their chips at once, beds compost or a first lift.");
    }
    steps.add("Keep chips off trunks, stems and walls as drawn.");
    if (cardboard) {
      steps.add(
          "Trees and shrubs go in before the cardboard, which is cut to fit round them, or through"
              + " it if their season comes later.");
    }
    String rest = cardboard ? "Plant the rest through the cardboard" : "Plant";
    steps.add(
        rest + (drip ? ", lay the dripline, then the last chips." : ", then lay the last chips."));
    return List.copyOf(steps);
  }

  /** The same under the table of layers. */
  static String order(boolean cardboard, boolean drip) {
    String trees =
        cardboard
            ? "Trees and shrubs are planted before the cardboard or, in a later season, through it;"
                + " all else through it into compost"
            : "Trees and shrubs are planted first or, in a later season, through what covers the"
                + " ground";
    if (!drip) {
      return trees + "; the last chips come after.";
    }
    return trees
        + (cardboard
            ? "; dripline lies on what covers the cardboard, the last chips on the dripline."
            : "; dripline lies under the last chips.");
  }
}
