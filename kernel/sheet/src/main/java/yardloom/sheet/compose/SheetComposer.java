package yardloom.sheet.compose;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.draw.Style;
import yardloom.kernel.draw.TextMetrics;
import yardloom.kernel.hands.Hands;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.sheet.paper.ColumnGrid;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Scale;
import yardloom.sheet.paper.Type;

/**
 * Composes sheets: frame, title block, site plan at true scale, legend, cautions, tables, figures,
 * notes. Nothing overlaps and nothing leaves the frame; what does not fit goes on to further
 * sheets. The same request gives the same sheets.
 */
public final class SheetComposer {
  private static final Style FRAME = Style.filled("frame", "").outlined(Palette.INK, 0.7);

  /** The widest words that a scale has decide how much room the title block needs. */
  private static final String WIDEST_SCALE = "1/2\" = 1'-0\"";

  private final TextMetrics metrics;
  private final SheetMemory memory;

  public SheetComposer(TextMetrics metrics) {
    this(metrics, new SheetMemory());
  }

  /** One that composes only those sheets again whose requests are not those of the last time. */
  public SheetComposer(TextMetrics metrics, SheetMemory memory) {
    this.metrics = metrics;
    this.memory = memory;
  }

  private Type type(SheetRequest request) {
    Type usual = request.sheet().format().isPocket() ? Type.ofPages(metrics) : new Type(metrics);
    return usual.times(request.firm().theme().letters());
  }

  private ColumnGrid grid(SheetRequest request) {
    ColumnGrid grid = ColumnGrid.of(request.paper());
    if (!request.sheet().format().isPocket()) {
      return grid;
    }
    // As high for every title: it is cut to its lines.
    TitleBlock title = new TitleBlock(request, request.sheet().title(), "", type(request));
    return grid.aboveStrip(title.height(grid.frame().width()));
  }

  /** A filled page without its title block. */
  record Filled(
      SheetRequest request,
      Page page,
      String title,
      Optional<Scale> drawnAt,
      int part,
      List<Table> optional) {
    String scale() {
      return drawnAt.map(Scale::words).orElse("");
    }
  }

  /**
   * The sheet and its continuations, numbered from the number of its plan.
   *
   * @throws yardloom.kernel.problem.PlanException (OUT_OF_RANGE) if the site plan does not fit on
   *     the paper at the scale asked for
   */
  public List<ComposedSheet> compose(SheetRequest request) {
    List<Filled> pages = fill(request);
    List<ComposedSheet> sheets = new ArrayList<>();
    for (Filled page : pages) {
      int number = request.sheet().number() + page.part();
      sheets.add(finish(page, number, number));
    }
    return sheets;
  }

  /**
   * All sheets of a set, in order of their plans, numbered through from 1. An optional table of
   * several sheets stands on the first that has room.
   */
  public List<ComposedSheet> composeSet(List<SheetRequest> requests) {
    return composeSet(requests, Hands.ONE);
  }

  /** The same by several at once. */
  public List<ComposedSheet> composeSet(List<SheetRequest> requests, Hands hands) {
    List<SheetRequest> sorted =
        requests.stream().sorted(Comparator.comparing(SheetRequest::sheet)).toList();
    List<List<Filled>> pages = new ArrayList<>();
    List<SheetRequest> opens = new ArrayList<>();
    Set<String> placed = new HashSet<>();
    Consumer<SheetRequest> fillNext =
        request -> {
          // A table that found room on one sheet needs none on a later one.
          SheetRequest open =
              request.withOptional(
                  request.optional().stream().filter(t -> !placed.contains(t.id())).toList());
          opens.add(open);
          List<Filled> filled =
              SheetIndex.isAskedBy(request) ? List.of() : memory.filled(open, this::fill);
          filled.forEach(page -> page.optional().forEach(t -> placed.add(t.id())));
          pages.add(filled);
        };
    if (hands == Hands.ONE) {
      sorted.forEach(fillNext);
    } else {
      fillAhead(sorted, fillNext, hands);
    }
    for (int i = 0; i < sorted.size(); i++) {
      if (SheetIndex.isAskedBy(sorted.get(i))) {
        pages.set(i, withIndex(sorted.get(i), i, pages));
      }
    }
    memory.set(opens, pages);
    return numbered(pages.stream().flatMap(List::stream).toList());
  }

  /**
   * Fills each sheet for the memory as if the others stood as in the last set, or else as if they
   * held none of its optional tables, and behind that, one sheet after the other, as they are. Most
   * are as they were filled ahead; of the others the drawing, which takes the longest, mostly is.
   */
  private void fillAhead(List<SheetRequest> sorted, Consumer<SheetRequest> fillNext, Hands hands) {
    SheetIndex first = new SheetIndex(1);
    for (SheetRequest request : sorted) {
      if (SheetIndex.isAskedBy(request)) {
        first.itself();
      } else {
        first.add(request.sheet().title(), WIDEST_SCALE, request.paper());
      }
    }
    int count = sorted.size();
    List<Set<Integer>> after = new ArrayList<>(Collections.nCopies(count, Set.of()));
    for (int i = 0; i < count; i++) {
      after.add(i == 0 ? Set.of(0) : Set.of(i, count + i - 1));
    }
    hands.inTurn(
        after,
        i -> {
          if (i < count) {
            SheetRequest request = likely(sorted.get(i));
            memory.filled(
                SheetIndex.isAskedBy(request) ? index(request, first) : request, this::fill);
          } else {
            fillNext.accept(sorted.get(i - count));
          }
        });
  }

  private SheetRequest index(SheetRequest request, SheetIndex first) {
    int at = memory.inSet(request.sheet().id());
    return at < 0
        ? first.in(request)
        : index(memory.pages().get(at).size(), at, memory.pages()).in(request);
  }

  /** With those of its optional tables that had not found room before it in the last set. */
  private SheetRequest likely(SheetRequest request) {
    int at = memory.inSet(request.sheet().id());
    if (at < 0) {
      return request;
    }
    Set<String> open =
        memory.open(at).optional().stream().map(Table::id).collect(Collectors.toSet());
    return request.withOptional(
        request.optional().stream().filter(t -> open.contains(t.id())).toList());
  }

  /**
   * One sheet of the set that was composed last, as {@code request} has it now, with its number in
   * that set: the other sheets are as they were, and so is the choice of optional tables.
   *
   * @return its pages; empty if that set had no such sheet
   */
  public List<ComposedSheet> composeAhead(SheetRequest request) {
    int at = memory.inSet(request.sheet().id());
    if (at < 0) {
      return List.of();
    }
    SheetRequest now = likely(request);
    List<List<Filled>> pages = new ArrayList<>(memory.pages());
    pages.set(
        at, SheetIndex.isAskedBy(now) ? withIndex(now, at, pages) : memory.filled(now, this::fill));
    int first = pages.subList(0, at).stream().mapToInt(List::size).sum();
    return numbered(pages.stream().flatMap(List::stream).toList())
        .subList(first, first + pages.get(at).size());
  }

  /** The sheet that lists the others; it is taken to be one page long unless it shows otherwise. */
  private List<Filled> withIndex(SheetRequest request, int at, List<List<Filled>> pages) {
    List<Filled> filled;
    int guess = 0;
    do {
      guess++;
      filled = memory.filled(index(guess, at, pages).in(request), this::fill);
    } while (filled.size() != guess);
    return filled;
  }

  /** The index of a set, on so many pages in the place of sheet {@code at}. */
  private static SheetIndex index(int itself, int at, List<List<Filled>> pages) {
    SheetIndex index = new SheetIndex(itself);
    for (int i = 0; i < pages.size(); i++) {
      if (i == at) {
        index.itself();
      } else {
        pages.get(i).forEach(p -> index.add(p.title(), p.scale(), p.request().paper()));
      }
    }
    return index;
  }

  /**
   * Refuses a plan whose lot alone is too large, before anything is worked out for it.
   *
   * @throws yardloom.kernel.problem.PlanException (OUT_OF_RANGE) if the lot does not fit on the
   *     paper at the scale asked for, or at any usual one
   */
  public void requireRoom(SheetRequest request) {
    SheetRequest turned = turned(request);
    if (turned.lot().isPresent()) {
      panel(turned).ifPresent(panel -> planPage(turned).scale());
    }
  }

  private List<ComposedSheet> numbered(List<Filled> pages) {
    List<ComposedSheet> sheets = new ArrayList<>();
    for (int i = 0; i < pages.size(); i++) {
      sheets.add(memory.finished(pages.get(i), i + 1, pages.size(), this::finish));
    }
    return sheets;
  }

  private List<Filled> fill(SheetRequest asked) {
    SheetRequest request = turned(new PaperWords(asked.info().units(), asked.names()).in(asked));
    ColumnGrid grid = grid(request);
    List<Filled> filled = new ArrayList<>();
    List<Block> waiting = waiting(request, grid);
    Map<Block, Table> optional = optional(request, grid);
    if (panel(request).isPresent()) {
      waiting = sitePlan(request, grid, waiting, optional, filled);
    }
    while (!waiting.isEmpty()) {
      String title = title(request, filled.size());
      Page page = new Page(grid, titleHeight(request, grid, title, ""));
      waiting = isRead(request) ? flow(waiting, page) : pour(waiting, page);
      List<Table> room = waiting.isEmpty() ? fillUp(page, optional) : List.of();
      filled.add(new Filled(request, page, title, Optional.empty(), filled.size(), room));
    }
    return filled;
  }

  private List<Block> waiting(SheetRequest request, ColumnGrid grid) {
    List<Block> waiting = new ArrayList<>();
    Blocks blocks = new Blocks(type(request));
    if (panel(request).isPresent() && !request.legend().isEmpty()) {
      waiting.add(blocks.legend(legend(request)));
    }
    if (!request.cautions().isEmpty()) {
      waiting.add(blocks.cautions(request.cautions()));
    }
    waiting.addAll(blocks(request, grid));
    return waiting;
  }

  private static List<LegendEntry> legend(SheetRequest request) {
    List<LegendEntry> legend = new ArrayList<>(request.legend());
    if (PartWindow.framed(request).isPresent()) {
      legend.add(LegendEntry.line("Part that is drawn larger", PartWindow.FRAME));
    }
    return legend;
  }

  /** Sets those of {@code optional} that find room and takes them from it. */
  private static List<Table> fillUp(Page page, Map<Block, Table> optional) {
    List<Table> set = new ArrayList<>();
    for (Block block : List.copyOf(optional.keySet())) {
      if (page.place(block)) {
        set.add(optional.remove(block));
      }
    }
    return set;
  }

  private static Optional<Panel.SitePlan> panel(SheetRequest request) {
    return request.sheet().panels().stream()
        .filter(Panel.SitePlan.class::isInstance)
        .map(Panel.SitePlan.class::cast)
        .findFirst();
  }

  /** On a standing sheet, if the drawing becomes larger so and the scale is free. */
  private SheetRequest turned(SheetRequest request) {
    boolean lying = request.paper().widthMm() > request.paper().heightMm();
    if (!lying || panel(request).isEmpty()) {
      return request;
    }
    SheetRequest standing = request.withPaper(request.paper().portrait());
    Optional<Scale> scaleLying = planPage(request).fittingScale();
    Optional<Scale> scaleStanding = planPage(standing).fittingScale();
    boolean better =
        scaleStanding.isPresent()
            && (scaleLying.isEmpty() || scaleStanding.get().compareTo(scaleLying.get()) < 0);
    return better ? standing : request;
  }

  private PlanPage planPage(SheetRequest request) {
    ColumnGrid grid = grid(request);
    String title = request.sheet().title();
    return new PlanPage(
        request, grid, type(request), titleHeight(request, grid, title, WIDEST_SCALE), memory);
  }

  private List<Block> sitePlan(
      SheetRequest request,
      ColumnGrid grid,
      List<Block> waiting,
      Map<Block, Table> optional,
      List<Filled> filled) {
    String title = title(request, filled.size());
    double titleHeight = titleHeight(request, grid, title, WIDEST_SCALE);
    PlanPage plan = new PlanPage(request, grid, type(request), titleHeight, memory);
    PlanPage.Filled page = plan.filled(request.sheet().title(), waiting, optional.keySet());
    Map<Block, Table> placed = new LinkedHashMap<>(optional);
    placed.keySet().removeAll(page.rest());
    List<Block> left = page.rest().stream().filter(b -> !optional.containsKey(b)).toList();
    optional.keySet().removeAll(placed.keySet());
    filled.add(
        new Filled(
            request,
            page.page(),
            title,
            Optional.of(page.scale()),
            filled.size(),
            List.copyOf(placed.values())));
    return left;
  }

  /** The optional tables that stand in one piece, as blocks. */
  private Map<Block, Table> optional(SheetRequest request, ColumnGrid grid) {
    TableFormat format = TableFormat.of(request.info());
    Map<Block, Table> blocks = new LinkedHashMap<>();
    for (Table table : request.optional()) {
      List<Block> parts = TableBlock.of(table, format, type(request), grid.content().width());
      if (parts.size() == 1 && !table.isEmpty()) {
        blocks.put(parts.get(0), table);
      }
    }
    return blocks;
  }

  private static String title(SheetRequest request, int part) {
    return part == 0 ? request.sheet().title() : goesOn(request.sheet().title());
  }

  /** The title of a sheet that goes on with {@code title}. */
  static String goesOn(String title) {
    return title + " (continued)";
  }

  private double titleHeight(SheetRequest request, ColumnGrid grid, String title, String scale) {
    return new TitleBlock(request, title, scale, type(request)).height(grid.titleBlockMm());
  }

  private List<Block> blocks(SheetRequest request, ColumnGrid grid) {
    TableFormat format = TableFormat.of(request.info());
    double width = grid.content().width();
    // As much as a fresh page offers across all its columns.
    double height = new Page(grid, titleHeight(request, grid, title(request, 1), "")).room(width);
    return new PanelBlocks(request, type(request), format, width, height).blocks();
  }

  /** Whether its pages are read from first to last. */
  static boolean isRead(SheetRequest request) {
    return request.sheet().format() == SheetPlan.Format.BOOKLET;
  }

  /** The same in reading order. */
  private static List<Block> flow(List<Block> blocks, Page page) {
    List<Block> rest = page.flow(blocks);
    return rest.size() == blocks.size() && rest.get(0) == blocks.get(0) ? pour(blocks, page) : rest;
  }

  /** Fills a fresh page; returns what is left. At least part of one block is always set. */
  private static List<Block> pour(List<Block> blocks, Page page) {
    List<Block> rest = new ArrayList<>();
    boolean empty = true;
    for (Block block : blocks) {
      if (page.place(block)) {
        empty = false;
        continue;
      }
      if (empty) {
        // Too tall for any sheet: set it in parts, here and on the next.
        Optional<Block> left = inParts(block, page);
        left.ifPresent(rest::add);
        empty = false;
      } else {
        rest.add(block);
      }
    }
    return rest;
  }

  private static Optional<Block> inParts(Block block, Page page) {
    Optional<Block> left = Optional.of(block);
    boolean any = false;
    while (left.isPresent()) {
      Optional<Block.Placed> placed = page.placePart(left.get());
      if (placed.isEmpty()) {
        break;
      }
      any = true;
      left = placed.get().rest();
    }
    if (!any) {
      throw new IllegalStateException("a block does not fit on an empty sheet");
    }
    return left;
  }

  private ComposedSheet finish(Filled filled, int number, int count) {
    SheetRequest request = filled.request();
    ColumnGrid grid = filled.page().grid();
    List<Ink> inks = new ArrayList<>(filled.page().inks());
    inks.add(Ink.Path.box(FRAME, grid.frame()));
    TitleBlock title = new TitleBlock(request, filled.title(), filled.scale(), type(request));
    inks.addAll(title.inks(grid.titleBlockMm(), grid.frame(), number + " of " + count));
    String id = request.sheet().id() + (filled.part() == 0 ? "" : "-" + (filled.part() + 1));
    String description =
        filled.title()
            + " of "
            + request.info().title()
            + (filled.scale().isEmpty() ? "" : ", scale " + filled.scale())
            + ", sheet "
            + number
            + " of "
            + count;
    return new ComposedSheet(
        id,
        number,
        filled.title(),
        description,
        request.paper(),
        filled.drawnAt(),
        request.firm().themed(inks));
  }
}
