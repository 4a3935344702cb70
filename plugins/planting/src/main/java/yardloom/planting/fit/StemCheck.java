package yardloom.planting.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;
import yardloom.planting.placing.Thinning;
import yardloom.planting.suit.rule.ReasonWords;

/**
 * Flags plants that will grow into a stem: nearer to a tree's middle than half their grown spread,
 * or a foot. Kinds in rows and slices keep off by themselves; what the plan places where it wants
 * may not.
 */
public final class StemCheck implements Check {
  private static final Source RULE =
      Source.commonPractice("plants keep half their grown spread, and a foot at least, from stems");

  @Override
  public String id() {
    return "planting.stems";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(PlantPlaces.KEY);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> found = new ArrayList<>();
    List<Element.Tree> trees = plan.all(Element.Tree.class);
    for (Planting p : facts.get(PlantPlaces.KEY).plantings()) {
      Length least = Planting.offStem(p.plant());
      for (Element.Tree tree : trees) {
        List<Point> near = Thinning.tooNear(p, tree.at());
        if (!near.isEmpty()) {
          found.add(finding(plan, p, tree, near, least));
        }
      }
    }
    return found;
  }

  private Finding finding(
      Plan plan, Planting p, Element.Tree tree, List<Point> near, Length least) {
    Length nearest =
        near.stream().map(at -> tree.at().distance(at)).min(Length::compareTo).orElseThrow();
    return Finding.of(
            id(),
            Severity.NOTE,
            near.size()
                + " of "
                + p.plant().name()
                + (near.size() == 1 ? " stands " : " stand ")
                + ReasonWords.both(plan, nearest)
                + " from the middle of "
                + tree.id()
                + "; grown, it needs "
                + ReasonWords.both(plan, least),
            "move it out, take a smaller kind, or leave those out",
            RULE)
        .about(p.bed().id(), p.place());
  }
}
