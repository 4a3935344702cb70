package yardloom.sheet.compose;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import yardloom.kernel.draw.Caution;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.OwnMeasures;
import yardloom.kernel.unit.UnitSystem;

/**
 * How words are printed: things by their bare names, begun with a capital, measures in the plan's
 * system, and in sets of feet and inches the spelling of the United States. Data files keep the
 * words as they are, because programs look for them.
 */
public final class PaperWords {
  /** Such as {@code bed "Asparagus"}: on paper the name alone is enough. */
  private static final Pattern NAMED =
      Pattern.compile(
          "\\b(bed|path|tree|fence|building|structure|paving|roof|utility|water point|keep-out|(?<!drop )zone)"
              + " \"([^\"]+)\"");

  private static final Map<String, String> US = new TreeMap<>();

  static {
    US.put("neighbour", "neighbor");
    US.put("colour", "color");
    US.put("labour", "labor");
    US.put("metre", "meter");
    US.put("litre", "liter");
    US.put("centre", "center");
    US.put("grey", "gray");
    US.put("mould", "mold");
    US.put("catalogue", "catalog");
    US.put("plough", "plow");
  }

  private static final Pattern BRITISH =
      Pattern.compile("(?i)\\b(" + String.join("|", US.keySet()) + ")(?=s?\\b|'s\\b|ed\\b|ing\\b)");

  private final UnitSystem units;
  private final Pattern listed;

  /** Words of a plan whose things have {@code names}: each begins with a capital in a list too. */
  public PaperWords(UnitSystem units, Collection<String> names) {
    this.units = units;
    String any =
        names.stream()
            .filter(n -> n.length() > 2)
            .distinct()
            .sorted()
            .map(Pattern::quote)
            .collect(Collectors.joining("|"));
    listed = Pattern.compile("(?<=, |: |for )(?:" + any + ")(?=$|[,:;]| to \\d)");
  }

  /** The text as it is printed. */
  public String of(String text) {
    String bare = OwnMeasures.of(bare(text), units);
    return units == UnitSystem.US
        ? BRITISH.matcher(bare).replaceAll(m -> Matcher.quoteReplacement(american(m.group(1))))
        : bare;
  }

  private static String bare(String text) {
    return NAMED
        .matcher(text)
        .replaceAll(m -> Matcher.quoteReplacement(title(m.group(1), m.group(2))));
  }

  /** As on the drawing: with a capital; a bare number gets its kind before it. */
  private static String title(String kind, String name) {
    return name.length() <= 2 ? capital(kind) + " " + name : capital(name);
  }

  /** What a cell of a table says, begun with a capital, unless it is a sign such as pH. */
  public String cell(String text) {
    String said = names(of(text));
    boolean sign = said.length() > 1 && Character.isUpperCase(said.codePointAt(1));
    return said.isEmpty() || sign ? said : capital(said);
  }

  private String names(String text) {
    return listed.matcher(text).replaceAll(m -> Matcher.quoteReplacement(upper(m.group())));
  }

  /** Not so the empty match of a plan without names. */
  private static String upper(String name) {
    return name.isEmpty() ? name : capital(name);
  }

  private static String capital(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }

  private static String american(String word) {
    String lower = US.get(word.toLowerCase(Locale.ROOT));
    return Character.isUpperCase(word.charAt(0))
        ? Character.toUpperCase(lower.charAt(0)) + lower.substring(1)
        : lower;
  }

  /** The request with all its texts as they are printed; names that a client gave are kept. */
  SheetRequest in(SheetRequest request) {
    SortedMap<Layer, List<Mark>> layers = new TreeMap<>();
    request.layers().forEach((layer, marks) -> layers.put(layer, marks(marks)));
    SortedMap<Layer, List<Mark>> part = new TreeMap<>();
    request.partLayers().forEach((layer, marks) -> part.put(layer, marks(marks)));
    List<Panel> panels = request.sheet().panels().stream().map(this::panel).toList();
    return request
        .withPanels(panels)
        .withDrawing(layers, legend(request.legend()))
        .withPart(part)
        .withCautions(
            request.cautions().stream()
                .map(c -> new Caution(of(c.text()), c.source(), c.when(), c.where()))
                .toList())
        .withOptional(request.optional().stream().map(this::table).toList());
  }

  private Panel panel(Panel panel) {
    if (panel instanceof Panel.Notes notes) {
      return new Panel.Notes(
          of(notes.title()), notes.paragraphs().stream().map(this::cell).toList());
    }
    if (panel instanceof Panel.TableBlock block) {
      return new Panel.TableBlock(table(block.table()));
    }
    return panel instanceof Panel.Figure figure
        ? new Panel.Figure(
            of(figure.title()),
            marks(figure.marks()),
            legend(figure.legend()),
            figure.minWidthMm(),
            figure.scaleDenominator())
        : panel;
  }

  private List<LegendEntry> legend(List<LegendEntry> entries) {
    return entries.stream().map(e -> e.called(of(e.text()))).toList();
  }

  /** Labels begin with a capital, whoever wrote them; marks of one or two letters stay. */
  public List<Mark> marks(List<Mark> marks) {
    List<Mark> said = new ArrayList<>();
    for (Mark mark : marks) {
      said.add(
          mark instanceof Mark.Label l
              ? new Mark.Label(
                  l.at(), label(l.text()), l.heightMm(), l.bold(), l.rank(), l.anchor(), l.ground())
              : mark);
    }
    return said;
  }

  private static String label(String text) {
    String said = bare(text);
    return said.length() > 2 && !Character.isUpperCase(said.charAt(1)) ? capital(said) : said;
  }

  private Table table(Table table) {
    List<Column> columns =
        table.columns().stream().map(c -> new Column(c.id(), of(c.title()), c.measure())).toList();
    List<List<Cell>> rows =
        table.rows().stream().map(row -> row.stream().map(this::cell).toList()).toList();
    List<String> notes = table.notes().stream().map(this::cell).toList();
    return new Table(table.id(), of(table.title()), columns, rows, notes, table.totals());
  }

  private Cell cell(Cell cell) {
    if (cell.value().isPresent() && cell.value().get() instanceof String text) {
      String said = cell(text);
      return said.equals(text) ? cell : Cell.text(said);
    }
    return cell;
  }
}
