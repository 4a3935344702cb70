package yardloom.materials.mulch;

import java.util.ArrayList;
import java.util.List;
import yardloom.facts.LocalRule;
import yardloom.facts.YardFacts;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.draw.Caution;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Say;

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
                "Chips and compost are dusty and deep heaps heat up: wet them, wear gloves and a mask,"
                    + " keep heaps off walls.",
                Source.commonPractice("handling of chips and compost"))
            .on(SheetPage.MATERIALS));
    if (!plan.all(Element.Building.class).isEmpty()) {
      cautions.add(
          new Caution(
                  Say.inText(
                      "Keep soil and mulch {6 in} below siding and off vents; against a foundation it"
                          + " hides termites.",
                      plan.info().units()),
                  Source.read("ENY-832", "University of Florida IFAS Extension", 0, "figure 1"))
              .on(SheetPage.MATERIALS));
    }
    boolean cardboard =
        !plan.attributes().get(MulchSettings.KEY).map(MulchSettings::chipsOnly).orElse(false);
    if (cardboard) {
      cautions.add(
          new Caution(
                  "Cardboard slows water and air: wet it through, and leave it out on wet or compacted"
                      + " ground.",
                  Source.read(
                      "Sheet mulching, aka lasagna composting",
                      "Oregon State University Extension",
                      0,
                      ""))
              .on(SheetPage.MATERIALS));
    }
    return cautions;
  }
}
