package yardloom.site.element;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.geom.Partition;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;

/**
 * The ground of the lot, divided by what is there. The parts count every square metre once and add
 * up to the lot.
 */
public final class Covering {
  private Covering() {}

  /** What is on the lot, one part per element that covers ground, and last what is open. */
  public static List<Partition.Part> byElement(Plan plan, Lot lot) {
    List<Partition.Claim> claims = new ArrayList<>();
    List<Element> elements = elements(plan);
    for (Element element : elements) {
      claims.add(new Partition.Claim(label(element.id(), elements), element.shape()));
    }
    return Partition.of(lot.shape(), claims, "Open ground");
  }

  /**
   * The elements that cover ground at ground level, what is built first and what is mulched whole
   * last.
   */
  public static List<Element> elements(Plan plan) {
    List<Element> found = new ArrayList<>();
    plan.all(Element.Building.class).stream().filter(b -> !b.neighbour()).forEach(found::add);
    found.addAll(plan.all(Element.Structure.class));
    found.addAll(plan.all(Element.Fence.class));
    found.addAll(plan.all(Element.Paving.class));
    found.addAll(plan.all(Element.Path.class));
    found.addAll(plan.all(Element.Bed.class));
    found.addAll(plan.all(Element.MulchedGround.class));
    return found;
  }

  public static String label(ElementId id) {
    return id.title();
  }

  /** The title, with the kind behind it where another kind of thing has the same. */
  private static String label(ElementId id, List<Element> among) {
    boolean alone =
        among.stream().filter(e -> e.id().title().equals(id.title())).limit(2).count() < 2;
    return alone ? id.title() : id.title() + " (" + id.kind().word() + ")";
  }
}
