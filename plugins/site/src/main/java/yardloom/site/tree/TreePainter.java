package yardloom.site.tree;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Mark.SymbolForm;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Element.Leaf;
import yardloom.kernel.unit.Angle;
import yardloom.site.element.ElementPainter;

/** Trees as crowns of the width that the plan gives, open so that the ground below can be read. */
public final class TreePainter extends ElementPainter<Element.Tree> {
  public TreePainter() {
    super(Element.Tree.class, new Layer("site.tree", "Trees", Layer.Band.PLANTS));
  }

  @Override
  protected List<Mark> paint(Element.Tree tree) {
    return List.of(
        new Mark.Symbol(
            tree.at(),
            form(tree.leaf()),
            tree.crown(),
            Angle.ZERO,
            Palette.TREE,
            tree.id().toString()));
  }

  private static SymbolForm form(Leaf leaf) {
    return leaf == Leaf.DECIDUOUS ? SymbolForm.CROWN_DECIDUOUS : SymbolForm.CROWN_EVERGREEN;
  }

  @Override
  protected List<LegendEntry> legend(List<Element.Tree> trees) {
    List<LegendEntry> entries = new ArrayList<>();
    for (Leaf leaf : Leaf.values()) {
      if (trees.stream().anyMatch(t -> t.leaf() == leaf)) {
        String words = leaf == Leaf.DECIDUOUS ? "Leaf-shedding tree" : "Evergreen tree";
        entries.add(LegendEntry.symbol(words + ", crown as given", form(leaf), Palette.TREE));
      }
    }
    return entries;
  }

  @Override
  public boolean partOfYard() {
    return true;
  }
}
