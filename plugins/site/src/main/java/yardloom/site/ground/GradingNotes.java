package yardloom.site.ground;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;

/** How the earth of a grading sheet is moved, said to whoever digs. */
final class GradingNotes {
  private GradingNotes() {}

  static List<String> of(Plan plan) {
    List<String> notes = new ArrayList<>();
    notes.add(
        "Levels are of the ground as measured, above the plan's own datum; between them the ground"
            + " is taken to be even.");
    if (plan.all(Element.Structure.class).stream()
        .filter(s -> s.attributes().get(LevelWords.SwaleLine.KEY).isPresent())
        .anyMatch(s -> !s.standing().stands())) {
      notes.add(
          "Peg the middle of each swale every 10 ft (3 m)"
              + " with a builder's level; move a peg up or down the slope until all are level.");
      notes.add(
          "Lay the turf and the earth along the lower edge and tread them down. Fill the swale with"
              + " a hose: where the water runs over first, raise the edge.");
      notes.add("Lead what runs over in a heavy rain away from buildings and neighbours.");
    }
    if (!plan.all(Element.Bed.class).isEmpty()) {
      notes.add(
          "A bed dug to its level needs no earth from elsewhere: what is cut above fills below."
              + " Set topsoil aside first and put it back on top.");
    }
    return notes;
  }
}
