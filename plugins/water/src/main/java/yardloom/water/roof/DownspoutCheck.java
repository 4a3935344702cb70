package yardloom.water.roof;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.water.roof.formula.RoofDrainage;

/** Roofs whose gutters and downspouts on the plan cannot carry the cloudburst. */
public final class DownspoutCheck implements Check {
  @Override
  public String id() {
    return "water.downspout";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of();
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> found = new ArrayList<>();
    for (Entry<Downspout> entry : plan.attributes().all(Downspout.KEY)) {
      unknown(plan, entry.value().roof(), "downspout", entry.place(), found);
    }
    for (Entry<Gutter> entry : plan.attributes().all(Gutter.KEY)) {
      unknown(plan, entry.value().roof(), "gutter", entry.place(), found);
    }
    Length rain = Cloudburst.of(plan).value();
    for (Element.Roof roof : plan.all(Element.Roof.class)) {
      Area section = Downspout.section(plan, roof.id().name());
      Area drained = RoofDrainage.drained(section, rain);
      if (section.squareMetres() > 0 && drained.compareTo(roof.shape().area()) < 0) {
        found.add(
            tooSmall(
                plan,
                roof,
                "the downspouts of '" + roof.id().name() + "' drain ",
                drained,
                roof.shape().area()));
      }
      Area share = Gutter.share(plan, roof).value();
      Gutter.of(plan, roof)
          .map(gutter -> gutter.value().drained(rain))
          .filter(carries -> carries.compareTo(share) < 0)
          .map(
              carries ->
                  tooSmall(
                      plan,
                      roof,
                      "the gutter of '" + roof.id().name() + "' drains, to each downspout, ",
                      carries,
                      share))
          .ifPresent(found::add);
    }
    return found;
  }

  private void unknown(Plan plan, String roof, String what, SourceRef place, List<Finding> found) {
    List<String> roofs = Roofs.names(plan);
    if (!roofs.contains(roof)) {
      found.add(
          Finding.of(
                  id(),
                  Severity.WARNING,
                  "there is no roof '" + roof + "' for the " + what,
                  roofs.isEmpty()
                      ? "the plan has no roof"
                      : "name one of " + String.join(", ", roofs) + "." + Nearest.hint(roof, roofs),
                  Downspout.RULE)
              .at(place));
    }
  }

  private Finding tooSmall(Plan plan, Element.Roof roof, String head, Area drained, Area area) {
    UnitSystem units = plan.info().units();
    String what =
        Say.both(Measure.AREA, drained, units) + " of its " + Say.both(Measure.AREA, area, units);
    return Finding.of(
            id(),
            Severity.WARNING,
            head + what + " in a cloudburst",
            "add a downspout, or take wider ones; give your place's `cloudburst` if this one is too"
                + " hard",
            Downspout.RULE)
        .about(roof.id(), roof.place());
  }
}
