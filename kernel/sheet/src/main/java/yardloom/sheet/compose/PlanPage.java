package yardloom.sheet.compose;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.Panel.SitePlan.Base;
import yardloom.kernel.draw.Style;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.ColumnGrid;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Scale;
import yardloom.sheet.paper.Type;
import yardloom.sheet.paper.View;
import yardloom.sheet.paper.Xy;

/**
 * Lays out a page with a site plan: the largest usual scale that fits beside one column, then the
 * arrangement of columns that holds most of the blocks.
 */
final class PlanPage {
  /** Room about the drawing for measures and labels; a page to carry has little to spare. */
  private static final double MARGIN_MM = 9;

  private static final double PAGE_MARGIN_MM = 6.5;

  private static final double LEAST_COLUMN_BELOW_MM = 40;

  /** How much smaller a page's drawing may get to leave room for the rest. */
  private static final double MOST_SMALLER = 2;

  private static final Style DIVIDER = Style.line("divider", Palette.INK, 0.25);

  /** How much larger a picture is drawn at least if its scale is not a usual one. */
  private static final double LEAST_GAIN = 1.1;

  private final SheetRequest request;
  private final SortedMap<Layer, List<Mark>> layers;
  private final ColumnGrid grid;

  /** What may be shown, from the whole to the least, so that a narrow lot is drawn large. */
  private final List<Envelope> extents;

  private final Type type;
  private final double titleHeightMm;
  private final SheetMemory memory;
  private final Optional<BeforeAndAfter> before;

  /**
   * Where the drawing goes.
   *
   * @param extent what it shows
   * @param side columns beside it
   * @param below whether columns go on under it
   */
  private record Arrangement(Envelope extent, int side, boolean below) {}

  PlanPage(
      SheetRequest request, ColumnGrid grid, Type type, double titleHeightMm, SheetMemory memory) {
    this.memory = memory;
    this.request = request;
    this.layers = PartWindow.onPlan(request);
    this.grid = grid;
    this.type = type;
    this.titleHeightMm = titleHeightMm;
    this.extents = extents(request);
    this.before = BeforeAndAfter.of(request, type);
    if (extents.get(0).isNull()) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION, "the site plan has nothing to draw; give the plan a lot");
    }
  }

  /**
   * What is shown: of a picture the lot alone, else also what stands near it. Where that makes the
   * drawing smaller, neighbours are cut off at the sides of the lot, measures never.
   */
  private static List<Envelope> extents(SheetRequest request) {
    Envelope all = extent(request);
    if (request.lot().isEmpty() || all.isNull()) {
      return List.of(all);
    }
    all = new Envelope(all);
    Envelope least = new Envelope(request.lot().get().bounds());
    List<Mark> measures =
        SheetRequest.all(request.layers()).stream()
            .filter(Mark.Dimension.class::isInstance)
            .toList();
    least.expandToInclude(View.extent(measures, Optional.empty()));
    all.expandToInclude(least);
    return List.of(
        all,
        new Envelope(least.getMinX(), least.getMaxX(), all.getMinY(), all.getMaxY()),
        new Envelope(all.getMinX(), all.getMaxX(), least.getMinY(), least.getMaxY()),
        least);
  }

  private static boolean isPicture(SheetRequest request) {
    return request.lot().isPresent()
        && request.sheet().panels().stream()
            .anyMatch(p -> p instanceof Panel.SitePlan s && s.base() == Base.NAMED);
  }

  private static Envelope extent(SheetRequest request) {
    return isPicture(request)
        ? new Envelope(request.lot().get().bounds())
        : View.extent(SheetRequest.all(request.layers()), request.lot().map(lot -> lot.bounds()));
  }

  /**
   * The scale asked for, or the largest usual one that fits.
   *
   * @throws PlanException (OUT_OF_RANGE) if the drawing does not fit on the paper
   */
  Scale scale() {
    Optional<Scale> fitting = fittingScale();
    if (fitting.isPresent()) {
      return fitting.get();
    }
    List<Scale> usual = Scale.usual(request.info().units());
    throw tooLarge(
        request.scale().orElse(usual.get(usual.size() - 1)),
        largestUsual()
            .map(s -> "a larger sheet, or the scale " + s.words())
            .orElse("a larger sheet"));
  }

  /** A page with the drawing at a scale, and the blocks that it does not hold. */
  record Filled(Page page, Scale scale, List<Block> rest) {}

  /**
   * The page at {@link #scale}; where the scale is free, at a smaller one if {@code blocks} all
   * stand beside the drawing only so: a further sheet is easily lost. A booklet is read on, but
   * what comes before its first table stands under the drawing.
   */
  Filled filled(String title, List<Block> blocks, Collection<Block> optional) {
    Scale largest = scale();
    if (request.scale().isPresent()) {
      return filled(largest, title, blocks, optional);
    }
    if (SheetComposer.isRead(request)) {
      List<Block> before = blocks.stream().takeWhile(b -> !isTable(b)).toList();
      return smaller(largest)
          .filter(s -> isRoomy(s, before, List.of()))
          .filter(s -> filled(s, title, before, List.of()).rest().isEmpty())
          .findFirst()
          .map(s -> filled(s, title, blocks, optional))
          .orElseGet(() -> filled(largest, title, blocks, optional));
    }
    return smaller(largest)
        .filter(s -> isRoomy(s, blocks, optional))
        .map(s -> filled(s, title, blocks, optional))
        .filter(f -> optional.containsAll(f.rest()))
        .findFirst()
        .orElseGet(() -> filled(largest, title, blocks, optional));
  }

  /**
   * Whether all {@code blocks} stand beside the drawing at a scale, if all its labels find room: a
   * cheap question, since nothing is drawn.
   */
  private boolean isRoomy(Scale scale, List<Block> blocks, Collection<Block> optional) {
    Page trial = new Page(grid, titleHeightMm);
    boolean read = SheetComposer.isRead(request);
    reserve(trial, read ? overColumns(scale) : fullest(scale, blocks, optional), scale);
    return read ? trial.flow(blocks).isEmpty() : notPlaced(trial, blocks) == 0;
  }

  /** The usual scales from the largest down to those that draw too small. */
  private Stream<Scale> smaller(Scale largest) {
    return Stream.concat(
        Stream.of(largest),
        Scale.usual(request.info().units()).stream()
            .sorted()
            .filter(s -> s.compareTo(largest) > 0)
            .filter(s -> s.denominator() <= MOST_SMALLER * largest.denominator()));
  }

  private static boolean isTable(Block block) {
    return !(block instanceof Stack stack) || stack.name().startsWith("table-");
  }

  private Filled filled(Scale scale, String title, List<Block> blocks, Collection<Block> optional) {
    Page page = new Page(grid, titleHeightMm);
    return new Filled(page, scale, fill(page, scale, title, blocks, optional));
  }

  /** The scale asked for, or the largest usual one; empty if the drawing does not fit so. */
  Optional<Scale> fittingScale() {
    return request.scale().isPresent()
        ? request.scale().filter(s -> !arrangements(s).isEmpty())
        : largestUsual().map(this::ofPicture);
  }

  private Optional<Scale> largestUsual() {
    return Scale.usual(request.info().units()).stream()
        .sorted()
        .filter(s -> !arrangements(s).isEmpty())
        .findFirst();
  }

  /**
   * A large picture is looked at, not measured: it fills its sheet at a round scale in between,
   * with a bar, where that is much larger than the usual one.
   */
  private Scale ofPicture(Scale usual) {
    if (!isPicture(request) || request.sheet().format().isPocket()) {
      return usual;
    }
    return Scale.ofPictures().stream()
        .filter(s -> s.denominator() * LEAST_GAIN <= usual.denominator())
        .filter(s -> !arrangements(s).isEmpty())
        .findFirst()
        .orElse(usual);
  }

  private PlanException tooLarge(Scale scale, String remedy) {
    Box room = grid.content();
    return new PlanException(
        ProblemCode.OUT_OF_RANGE,
        String.format(
            Locale.ROOT,
            "the site plan at %s needs %.0f by %.0f mm of paper, %s has %.0f by %.0f mm beside its"
                + " title block; use %s",
            scale.words(),
            width(scale, extents.get(extents.size() - 1)),
            height(scale, extents.get(extents.size() - 1)),
            request.paper().name(),
            grid.span(Math.max(1, grid.columns() - 1)),
            room.height() - ViewTitle.HEIGHT_MM,
            remedy));
  }

  private double width(Scale scale, Envelope extent) {
    double one = scale.paperMm(extent.getWidth()) + 2 * margin();
    return before.map(pair -> pair.widthMm(one, extent)).orElse(one);
  }

  private double height(Scale scale, Envelope extent) {
    double one = scale.paperMm(extent.getHeight()) + 2 * margin();
    return before.map(pair -> pair.heightMm(one, extent)).orElse(one);
  }

  private double margin() {
    return request.sheet().format().isPocket() ? PAGE_MARGIN_MM : MARGIN_MM;
  }

  /** The arrangements in which the drawing fits, preferred ones first. */
  private List<Arrangement> arrangements(Scale scale) {
    return extents.stream()
        .map(extent -> arrangements(scale, extent))
        .filter(fitting -> !fitting.isEmpty())
        .findFirst()
        .orElse(List.of());
  }

  private List<Arrangement> arrangements(Scale scale, Envelope extent) {
    List<Arrangement> fitting = new ArrayList<>();
    double left = grid.content().height() - ViewTitle.HEIGHT_MM - height(scale, extent);
    for (int side = 1; side < grid.columns() && left >= 0; side++) {
      if (width(scale, extent) > grid.span(grid.columns() - side)) {
        break;
      }
      fitting.add(new Arrangement(extent, side, false));
      if (left >= LEAST_COLUMN_BELOW_MM + ColumnGrid.GAP_MM) {
        fitting.add(new Arrangement(extent, side, true));
      }
    }
    double least = grid.isAboveStrip() ? LEAST_COLUMN_BELOW_MM : titleHeightMm;
    if (width(scale, extent) <= grid.content().width() && left >= least + ColumnGrid.GAP_MM) {
      fitting.add(new Arrangement(extent, 0, true));
    }
    return fitting;
  }

  /**
   * The page with the drawing and those of {@code blocks} that it holds, then of {@code optional};
   * the rest is returned.
   */
  private List<Block> fill(
      Page page, Scale scale, String title, List<Block> blocks, Collection<Block> optional) {
    boolean read = SheetComposer.isRead(request);
    Arrangement best = read ? overColumns(scale) : fullest(scale, blocks, optional);
    reserve(page, best, scale);
    Drawing.Done drawing = draw(page, best, scale, title);
    List<Block> all = new ArrayList<>(blocks);
    Blocks notes = new Blocks(type);
    if (!drawing.figures().isEmpty()) {
      all.add(notes.notes("figures", "Figures that stand for names", drawing.figures()));
    }
    if (!drawing.homeless().isEmpty()) {
      all.add(
          notes.notes("unplaced", "Labels that found no room on the drawing", drawing.homeless()));
    }
    all.addAll(optional);
    if (read) {
      return page.flow(all);
    }
    List<Block> rest = new ArrayList<>();
    for (Block block : all) {
      if (!page.place(block)) {
        rest.add(block);
      }
    }
    return rest;
  }

  /**
   * The first arrangement that holds all {@code blocks} and leaves out the fewest others; where a
   * further sheet is needed in any case, the first that covers the most paper with blocks.
   */
  private Arrangement fullest(Scale scale, List<Block> blocks, Collection<Block> optional) {
    Arrangement best = null;
    int fewest = Integer.MAX_VALUE;
    Arrangement widest = null;
    double most = -1;
    for (Arrangement candidate : arrangements(scale)) {
      Page trial = new Page(grid, titleHeightMm);
      reserve(trial, candidate, scale);
      if (notPlaced(trial, blocks) == 0) {
        int left = notPlaced(trial, optional);
        if (left < fewest) {
          best = candidate;
          fewest = left;
        }
      } else if (trial.setMm2() > most) {
        widest = candidate;
        most = trial.setMm2();
      }
    }
    return best == null ? widest : best;
  }

  /** The drawing over all columns, so that what is read goes on below it. */
  private Arrangement overColumns(Scale scale) {
    List<Arrangement> all = arrangements(scale);
    return all.get(all.size() - 1);
  }

  private static int notPlaced(Page page, Collection<Block> blocks) {
    int left = 0;
    for (Block block : blocks) {
      left += page.place(block) ? 0 : 1;
    }
    return left;
  }

  private void reserve(Page page, Arrangement arrangement, Scale scale) {
    double end =
        arrangement.below()
            ? grid.content().y()
                + height(scale, arrangement.extent())
                + ViewTitle.HEIGHT_MM
                + ColumnGrid.GAP_MM
            : grid.content().bottom();
    page.reserve(grid.columns() - arrangement.side(), end);
  }

  private Drawing.Done draw(Page page, Arrangement arrangement, Scale scale, String title) {
    Box content = grid.content();
    int columns = grid.columns() - arrangement.side();
    Envelope extent = arrangement.extent();
    double height =
        arrangement.below() ? height(scale, extent) : content.height() - ViewTitle.HEIGHT_MM;
    Box area = new Box(content.x(), content.y(), grid.span(columns), height);
    Box room = before.map(pair -> pair.after(area, extent)).orElse(area);
    List<Ink> inks = new ArrayList<>();
    before.ifPresent(
        pair -> {
          Box earlier = pair.before(area, extent);
          inks.addAll(pair.titles(earlier, room));
          inks.add(
              Ink.Group.of(
                  "before",
                  "",
                  drawing(" before", request.partLayers(), extent, scale, earlier).inks()));
        });
    Drawing.Done drawing = drawing("", layers, extent, scale, room);
    inks.addAll(drawing.inks());
    page.inks().add(Ink.Group.of("site-plan", title, inks));
    Box strip = new Box(area.x(), area.bottom(), area.width(), ViewTitle.HEIGHT_MM);
    page.inks()
        .addAll(
            ViewTitle.at(
                strip, title, scale, request.info().units(), request.north().degrees(), type));
    if (arrangement.side() > 0) {
      double x = grid.left(columns) - ColumnGrid.GUTTER_MM / 2;
      Box frame = grid.frame();
      // Below the drawing a table may run through all columns.
      double end = arrangement.below() ? strip.bottom() : frame.bottom();
      page.inks().add(Ink.Path.line(DIVIDER, new Xy(x, frame.y()), new Xy(x, end)));
    }
    return drawing;
  }

  private Drawing.Done drawing(
      String which, SortedMap<Layer, List<Mark>> shown, Envelope extent, Scale scale, Box room) {
    View view = View.centred(extent, 1000 / scale.denominator(), room);
    return memory.drawing(
        request.sheet().id() + which,
        new SheetMemory.DrawingRequest(shown, view, room, request.sheet().format().isPocket()),
        r -> new Drawing(r.layers(), r.view(), r.area(), type, memory.linesLeft()).done());
  }
}
