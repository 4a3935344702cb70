package yardloom.sheet.compose;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import yardloom.kernel.draw.Caution;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Angle;
import yardloom.sheet.paper.Paper;
import yardloom.sheet.paper.Scale;

/**
 * All that a sheet is composed from. Start with {@link #of} and add with the {@code with} methods.
 *
 * @param scale asked for; empty to take the largest that fits
 * @param layers the marks of the site plan
 * @param partLayers the marks of the enlarged part, or of the view of before
 * @param lot what the site plan must show in full; surroundings are cut off
 * @param north clockwise from the sheet's up direction
 * @param optional tables that fill room left on the site plan's sheet and on its continuations;
 *     never a reason for another sheet
 * @param names of the plan's things, which lists begin with a capital
 * @param firm how the firm that draws it wants it to look
 */
public record SheetRequest(
    SheetPlan sheet,
    Paper paper,
    PlanInfo info,
    Optional<Scale> scale,
    SortedMap<Layer, List<Mark>> layers,
    SortedMap<Layer, List<Mark>> partLayers,
    List<LegendEntry> legend,
    List<Caution> cautions,
    Angle north,
    Optional<Shape> lot,
    List<Table> optional,
    List<String> names,
    FirmLook firm) {

  public SheetRequest {
    layers = sorted(layers);
    partLayers = sorted(partLayers);
    legend = List.copyOf(legend);
    cautions = List.copyOf(cautions);
    optional = List.copyOf(optional);
    names = List.copyOf(names);
  }

  private static SortedMap<Layer, List<Mark>> sorted(Map<Layer, List<Mark>> layers) {
    SortedMap<Layer, List<Mark>> sorted = new TreeMap<>();
    layers.forEach((layer, marks) -> sorted.put(layer, List.copyOf(marks)));
    return Collections.unmodifiableSortedMap(sorted);
  }

  public static SheetRequest of(SheetPlan sheet, Paper paper, PlanInfo info) {
    return new SheetRequest(
        sheet,
        paper,
        info,
        Optional.empty(),
        new TreeMap<>(),
        new TreeMap<>(),
        List.of(),
        List.of(),
        Angle.ZERO,
        Optional.empty(),
        List.of(),
        List.of(),
        FirmLook.NONE);
  }

  public SheetRequest withScale(Optional<Scale> newScale) {
    return copy(c -> c.scale = newScale);
  }

  public SheetRequest withPaper(Paper newPaper) {
    return copy(c -> c.paper = newPaper);
  }

  /** The site plan's marks and legend. */
  public SheetRequest withDrawing(Map<Layer, List<Mark>> newLayers, List<LegendEntry> newLegend) {
    return copy(
        c -> {
          c.layers = new TreeMap<>(newLayers);
          c.legend = newLegend;
        });
  }

  /** The marks of the enlarged part or of the view of before; the legend is the site plan's. */
  public SheetRequest withPart(Map<Layer, List<Mark>> newLayers) {
    return copy(c -> c.partLayers = new TreeMap<>(newLayers));
  }

  public SheetRequest withCautions(List<Caution> newCautions) {
    return copy(c -> c.cautions = newCautions);
  }

  /** The lot to show, and true north clockwise from the sheet's up direction. */
  public SheetRequest withSite(Optional<Shape> newLot, Angle newNorth) {
    return copy(
        c -> {
          c.lot = newLot;
          c.north = newNorth;
        });
  }

  /** Tables for room that the site plan's sheet or a continuation of it leaves. */
  public SheetRequest withOptional(List<Table> tables) {
    return copy(c -> c.optional = tables);
  }

  /** The names of the plan's things as the script gives them. */
  public SheetRequest withNames(List<String> newNames) {
    return copy(c -> c.names = newNames);
  }

  /** The firm's mark and theme. */
  public SheetRequest withFirm(FirmLook newFirm) {
    return copy(c -> c.firm = newFirm);
  }

  /** The same sheet with other panels. */
  SheetRequest withPanels(List<Panel> panels) {
    return copy(c -> c.sheet = sheet.with(panels));
  }

  /** The components while one copy is made of another, so that each change names only itself. */
  private static final class Copy {
    private SheetPlan sheet;
    private Paper paper;
    private Optional<Scale> scale;
    private SortedMap<Layer, List<Mark>> layers;
    private SortedMap<Layer, List<Mark>> partLayers;
    private List<LegendEntry> legend;
    private List<Caution> cautions;
    private Angle north;
    private Optional<Shape> lot;
    private List<Table> optional;
    private List<String> names;
    private FirmLook firm;
  }

  private SheetRequest copy(Consumer<Copy> change) {
    Copy c = new Copy();
    c.sheet = sheet;
    c.paper = paper;
    c.scale = scale;
    c.layers = layers;
    c.partLayers = partLayers;
    c.legend = legend;
    c.cautions = cautions;
    c.north = north;
    c.lot = lot;
    c.optional = optional;
    c.names = names;
    c.firm = firm;
    change.accept(c);
    return new SheetRequest(
        c.sheet,
        c.paper,
        info,
        c.scale,
        c.layers,
        c.partLayers,
        c.legend,
        c.cautions,
        c.north,
        c.lot,
        c.optional,
        c.names,
        c.firm);
  }

  static List<Mark> all(SortedMap<Layer, List<Mark>> layers) {
    List<Mark> all = new ArrayList<>();
    layers.values().forEach(all::addAll);
    return all;
  }
}
