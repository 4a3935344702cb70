package yardloom.kernel.plan;

/** Elements with a turn. */
final class TurnedElements {
  private TurnedElements() {}

  /** The same element in that turn. */
  static Element of(Element element, PartTurn turn) {
    if (turn == PartTurn.NOW) {
      return element;
    }
    Attributes attributes = element.attributes().with(PartTurn.KEY, turn, element.place());
    return with(element, new Element.Common(element.id(), element.place(), attributes));
  }

  private static Element with(Element element, Element.Common c) {
    if (element instanceof Element.Building e) {
      return new Element.Building(
          c, e.shape(), e.eavesHeight(), e.ridgeHeight(), e.overhang(), e.roof(), e.neighbour());
    }
    if (element instanceof Element.Structure e) {
      return new Element.Structure(c, e.shape(), e.height());
    }
    if (element instanceof Element.Fence e) {
      return new Element.Fence(c, e.line(), e.shape(), e.height(), e.openness());
    }
    if (element instanceof Element.Paving e) {
      return new Element.Paving(c, e.shape(), e.surface());
    }
    if (element instanceof Element.Tree e) {
      return new Element.Tree(
          c, e.at(), e.shape(), e.crown(), e.height(), e.crownBase(), e.trunk(), e.leaf());
    }
    if (element instanceof Element.Path e) {
      return new Element.Path(c, e.line(), e.shape(), e.width(), e.use());
    }
    if (element instanceof Element.Bed e) {
      return new Element.Bed(c, e.shape(), e.use());
    }
    if (element instanceof Element.MulchedGround e) {
      return new Element.MulchedGround(c, e.shape());
    }
    if (element instanceof Element.WaterPoint e) {
      return new Element.WaterPoint(c, e.at(), e.source());
    }
    if (element instanceof Element.Roof e) {
      return new Element.Roof(c, e.shape(), e.surface());
    }
    if (element instanceof Element.Utility e) {
      return new Element.Utility(c, e.line(), e.shape(), e.carries(), e.clearance());
    }
    if (element instanceof Element.KeepOut e) {
      return new Element.KeepOut(c, e.shape(), e.reason());
    }
    throw new IllegalStateException("no such kind: " + element.id());
  }
}
