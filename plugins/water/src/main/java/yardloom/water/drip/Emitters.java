package yardloom.water.drip;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.water.drip.formula.DripLayout;
import yardloom.water.drip.formula.EmitterCount;

/**
 * Single emitters of a bed or tree: how many each plant has by its mature spread, and plain tube
 * laid so that it passes them.
 */
public final class Emitters {
  private static final Source COUNT =
      Source.read(
          "Microirrigation, practice standard 441: wetted share = wetted area / root area",
          "USDA NRCS, slides of C. Prestwich",
          0,
          "as training pages on emitters for each plant have it: 60 percent, up to the next");

  /** Tubes in a bed lie no closer (common practice). */
  private static final Length NARROW = Length.inches(12);

  /** And no farther apart (common practice). */
  private static final Length WIDE = Length.feet(6);

  /** Tubes shorter than half of that have no emitter (common practice). */
  private static final Length LEAST_ROW = Length.inches(6);

  static final String TUBES_SAY =
      "Tubes in a bed lie as far apart as its narrowest plant grows wide, 12 in (30 cm) at least"
          + " and 6 ft (1.8 m) at most; pieces under 3 in (8 cm) are left out (common practice).";

  /** A tree stands firm when it drinks on two sides. */
  private static final int LEAST_OF_TREE = 2;

  /**
   * What plants of one kind have.
   *
   * @param each emitters of one plant
   */
  public record OfKind(String plant, int plants, Length spread, Derived<Integer> each) {
    int all() {
      return plants * each.value();
    }
  }

  /** The tube, and the choice with the distance that so many emitters have on it. */
  record Laid(List<Line> rows, DripChoice choice, List<OfKind> kinds) {}

  private Emitters() {}

  static Laid lay(
      Element of, Shape ground, List<ElementId> waters, Entry<DripChoice> said, Facts in) {
    Derived<Length> width = WettedGround.width(in.find(YardFacts.SOIL), said.value().emitter());
    List<OfKind> kinds = new ArrayList<>();
    for (Stand stand : in.all(YardFacts.STANDS)) {
      boolean own = waters.contains(stand.in()) && !stand.follows();
      if (own && !stand.placed().at().isEmpty() && stand.placed().drills().isEmpty()) {
        boolean isTree = !stand.in().equals(of.id()) || of instanceof Element.Tree;
        kinds.add(
            ofKind(
                stand.plant(),
                stand.placed().at().size(),
                stand.kind().spread(),
                isTree,
                width,
                said));
      }
    }
    if (kinds.isEmpty()) {
      Length across = Length.metres(2 * Math.sqrt(ground.area().squareMetres() / Math.PI));
      kinds.add(ofKind("ground", 1, across, of instanceof Element.Tree, width, said));
    }
    Length apart = apart(of, kinds, width, said.value());
    List<Line> rows = DripLayout.rows(ground, apart, LEAST_ROW);
    int wanted = kinds.stream().mapToInt(OfKind::all).sum();
    Length spacing = rows.isEmpty() ? apart : EmitterCount.spacing(rows, wanted);
    return new Laid(rows, said.value().spaced(spacing, apart), kinds);
  }

  private static OfKind ofKind(
      String plant,
      int plants,
      Length spread,
      boolean isTree,
      Derived<Length> width,
      Entry<DripChoice> said) {
    Area area = spread.by(spread).times(Math.PI / 4);
    int least = isTree ? LEAST_OF_TREE : 1;
    int each = Math.max(least, EmitterCount.of(area, said.value().share(), width.value()));
    return new OfKind(
        plant,
        plants,
        spread,
        Derived.by("max(least, up(share × mature spread^2 / wetted width^2 − 0.1))", COUNT)
            .from("least", least)
            .from("share", said.value().share(), said.place())
            .from("mature spread", spread)
            .from("wetted width", width)
            .gives(each));
  }

  /** Rings so far apart that the share is wetted evenly; rows in a bed by its narrowest plant. */
  private static Length apart(
      Element of, List<OfKind> kinds, Derived<Length> width, DripChoice choice) {
    if (of instanceof Element.Bed) {
      Optional<Length> least = kinds.stream().map(OfKind::spread).min(Length::compareTo);
      return least.orElse(NARROW).max(NARROW).min(WIDE);
    }
    return width.value().times(Math.sqrt(Math.PI / 4 / choice.share()));
  }
}
