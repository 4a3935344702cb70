package yardloom.site.built;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.plan.Element;
import yardloom.site.element.ElementPainter;

/** Buildings by their walls, with the line of the eaves where a roof stands out. */
public final class BuildingPainter extends ElementPainter<Element.Building> {
  public BuildingPainter() {
    super(Element.Building.class, new Layer("site.building", "Buildings", Layer.Band.WORKS));
  }

  @Override
  protected List<Mark> paint(Element.Building building) {
    String about = building.id().toString();
    List<Mark> marks = new ArrayList<>();
    if (building.overhang().metres() > 0 && !building.neighbour()) {
      marks.add(
          new Mark.Region(
              building.shape().grownWithCorners(building.overhang()), Palette.EAVES, about));
    }
    marks.add(
        new Mark.Region(
            building.shape(), building.neighbour() ? Palette.NEIGHBOUR : Palette.BUILDING, about));
    return marks;
  }

  @Override
  protected List<LegendEntry> legend(List<Element.Building> buildings) {
    List<LegendEntry> entries = new ArrayList<>();
    if (buildings.stream().anyMatch(b -> !b.neighbour())) {
      entries.add(LegendEntry.area("Building", Palette.BUILDING));
    }
    if (buildings.stream().anyMatch(b -> !b.neighbour() && b.overhang().metres() > 0)) {
      entries.add(LegendEntry.line("Eaves", Palette.EAVES));
    }
    if (buildings.stream().anyMatch(Element.Building::neighbour)) {
      entries.add(LegendEntry.area("Neighbour's building", Palette.NEIGHBOUR));
    }
    return entries;
  }

  @Override
  public boolean partOfYard() {
    return true;
  }
}
