package yardloom.materials.mulch;

import java.util.ArrayList;
import java.util.List;
import yardloom.facts.LocalRule;
import yardloom.facts.YardFacts;
import yardloom.kernel.draw.Caution;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;

/** What the sheets warn of when ground is mulched or dug. */
public final class MaterialCautions {
  private MaterialCautions() {}

  public static List<Caution> of(Plan plan, Facts facts) {
    List<Caution> cautions = new ArrayList<>();
    if (facts.all(YardFacts.SURFACES).isEmpty()) {
      return cautions;
    }
    // The kernel prints the general caution on digging; a local one is added to it.
    for (String topic : List.of("digging", "lead")) {
      facts.all(YardFacts.LOCAL_RULES).stream()
          .filter(rule -> rule.topic().equals(topic))
          .filter(rule -> topic.equals("lead") || rule.rank() > LocalRule.GENERIC)
          .forEach(rule -> cautions.add(new Caution(rule.text(), rule.source())));
    }
    cautions.add(
        new Caution(
            "Fresh chips and compost are dusty and a deep pile heats up: wet them before moving,"
                + " wear gloves and a dust mask, keep piles away from walls, lift with the legs.",
            Source.commonPractice("handling of chips and compost")));
    if (!plan.all(Element.Building.class).isEmpty()) {
      cautions.add(
          new Caution(
              "Keep soil and mulch 6 in below siding and away from vents; mulch against a"
                  + " foundation hides termites.",
              Source.read("ENY-832", "University of Florida IFAS Extension", 0, "figure 1")));
    }
    boolean cardboard =
        !plan.attributes().get(MulchSettings.KEY).map(MulchSettings::chipsOnly).orElse(false);
    if (cardboard) {
      cautions.add(
          new Caution(
              "Cardboard forms an interface that slows water and air and does not suit every site;"
                  + " wet it through, and leave it out on wet or compacted ground.",
              Source.read(
                  "Sheet mulching, aka lasagna composting",
                  "Oregon State University Extension",
                  0,
                  "")));
    }
    return cautions;
  }
}
