package yardloom.water.roof;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.water.roof.formula.RoofDrainage;

/** Roofs whose downspouts on the plan cannot carry the cloudburst. */
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
    List<String> roofs = Roofs.names(plan);
    for (Entry<Downspout> entry : plan.attributes().all(Downspout.KEY)) {
      String name = entry.value().roof();
      if (!roofs.contains(name)) {
        found.add(
            Finding.of(
                    id(),
                    Severity.WARNING,
                    "there is no roof '" + name + "' for the downspout",
                    roofs.isEmpty()
                        ? "the plan has no roof"
                        : "name one of "
                            + String.join(", ", roofs)
                            + "."
                            + Nearest.hint(name, roofs),
                    Downspout.RULE)
                .at(entry.place()));
      }
    }
    Length rain = Cloudburst.of(plan).value();
    for (Element.Roof roof : plan.all(Element.Roof.class)) {
      Area section = Downspout.section(plan, roof.id().name());
      Area drained = RoofDrainage.drained(section, rain);
      if (section.squareMetres() > 0 && drained.compareTo(roof.shape().area()) < 0) {
        found.add(tooSmall(plan, roof, drained));
      }
    }
    return found;
  }

  private Finding tooSmall(Plan plan, Element.Roof roof, Area drained) {
    Area area = roof.shape().area();
    String what =
        plan.info()
            .units()
            .both(
                String.format(
                    Locale.ROOT, "%.0f of its %.0f sq ft", drained.squareFeet(), area.squareFeet()),
                String.format(
                    Locale.ROOT,
                    "%.0f of its %.0f m²",
                    drained.squareMetres(),
                    area.squareMetres()));
    return Finding.of(
            id(),
            Severity.WARNING,
            "the downspouts of '" + roof.id().name() + "' drain " + what + " in a cloudburst",
            "add one, or take a wider one; give your place's `cloudburst` if this one is too hard",
            Downspout.RULE)
        .about(roof.id(), roof.place());
  }
}
