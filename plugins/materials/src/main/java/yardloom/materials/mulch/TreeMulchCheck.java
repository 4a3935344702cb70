package yardloom.materials.mulch;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.MulchSurface;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.NameRuns;
import yardloom.kernel.unit.Length;

/** Trees to plant in open ground of a yard that is mulched elsewhere. */
public final class TreeMulchCheck implements Check {
  private static final Source RULE =
      Source.commonPractice(
          "a new tree is mulched like all that is planted; grass takes its water");

  /** Ground this near is about the trunk: chips are kept off the trunk itself. */
  private static final Length ABOUT_TRUNK = Length.feet(1);

  @Override
  public String id() {
    return "materials.tree-bare";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.STANDS, YardFacts.SURFACES);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<MulchSurface> surfaces = facts.all(YardFacts.SURFACES);
    if (surfaces.isEmpty()) {
      return List.of();
    }
    Set<ElementId> planted =
        facts.all(YardFacts.STANDS).stream()
            .filter(stand -> !stand.planted().stands())
            .map(Stand::in)
            .collect(Collectors.toSet());
    List<Element.Tree> bare =
        plan.all(Element.Tree.class).stream()
            .filter(tree -> planted.contains(tree.id()))
            .filter(tree -> surfaces.stream().noneMatch(s -> isAbout(s, tree)))
            .toList();
    if (bare.isEmpty()) {
      return List.of();
    }
    String names = NameRuns.text(bare.stream().map(t -> t.id().name()).toList());
    return List.of(
        Finding.of(
                "materials.tree-bare",
                Severity.NOTE,
                "Planted in open ground without mulch: " + names + ".",
                "Say `mulchRing` with its width in the block of the tree, or set it in a bed or"
                    + " in mulched ground.",
                RULE)
            .at(bare.get(0).place()));
  }

  private static boolean isAbout(MulchSurface surface, Element.Tree tree) {
    return surface.of().equals(tree.id())
        || surface.shape().distance(tree.at()).compareTo(ABOUT_TRUNK.plus(tree.trunk())) < 0;
  }
}
