package yardloom.site.tree;

import java.util.ArrayList;
import java.util.List;
import yardloom.facts.FlatCrown;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Mark.SymbolForm;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Element.Leaf;
import yardloom.kernel.unit.Angle;
import yardloom.site.element.ElementPainter;

/**
 * Trees as crowns of the width that the plan gives, open so that the ground below can be read,
 * those trained flat along their wires; one that stands already with its trunk.
 */
public final class TreePainter extends ElementPainter<Element.Tree> {
  private static final Style TRUNK = Style.filled("trunk", Palette.TREE.stroke());

  public TreePainter() {
    super(Element.Tree.class, new Layer("site.tree", "Trees", Layer.Band.PLANTS));
  }

  @Override
  protected List<Mark> paint(Element.Tree tree) {
    String about = tree.id().toString();
    List<Mark> marks = new ArrayList<>();
    Style style = style(tree, Palette.TREE);
    marks.add(
        tree.attributes()
            .get(FlatCrown.KEY)
            .<Mark>map(flat -> new Mark.Region(flat.about(tree.at()), style, about))
            .orElseGet(
                () ->
                    new Mark.Symbol(
                        tree.at(), form(tree.leaf()), tree.crown(), Angle.ZERO, style, about)));
    if (tree.stands() && tree.trunk().metres() > 0) {
      marks.add(
          new Mark.Symbol(tree.at(), SymbolForm.DISC, tree.trunk(), Angle.ZERO, TRUNK, about));
    }
    return marks;
  }

  private static SymbolForm form(Leaf leaf) {
    return leaf == Leaf.DECIDUOUS ? SymbolForm.CROWN_DECIDUOUS : SymbolForm.CROWN_EVERGREEN;
  }

  @Override
  protected List<LegendEntry> legend(List<Element.Tree> trees) {
    List<LegendEntry> entries = new ArrayList<>();
    for (Leaf leaf : Leaf.values()) {
      List<Element.Tree> such = trees.stream().filter(t -> t.leaf() == leaf && !isFlat(t)).toList();
      String words = (leaf == Leaf.DECIDUOUS ? "Deciduous" : "Evergreen") + " tree";
      entries.addAll(
          byStanding(
              such,
              words,
              Palette.TREE,
              (text, style) -> LegendEntry.symbol(text, form(leaf), style)));
    }
    List<Element.Tree> flat = trees.stream().filter(TreePainter::isFlat).toList();
    entries.addAll(byStanding(flat, "Tree trained flat", Palette.TREE, LegendEntry::area));
    return entries;
  }

  private static boolean isFlat(Element.Tree tree) {
    return tree.attributes().get(FlatCrown.KEY).isPresent();
  }

  @Override
  public boolean partOfYard() {
    return true;
  }
}
