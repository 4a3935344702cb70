package yardloom.program.compare;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import yardloom.kernel.table.TableFormat;

/** A comparison as text for the console. */
public final class ChangeText {
  private final Comparison comparison;
  private final ThingWords words;
  private final StringBuilder text = new StringBuilder();

  private ChangeText(Comparison comparison) {
    this.comparison = comparison;
    this.words = new ThingWords(TableFormat.of(comparison.now().info()));
  }

  /**
   * The changes under headings; one sentence if there are none.
   *
   * @param all whether every figure is listed, instead of how many of each table
   */
  public static String of(Comparison comparison, boolean all) {
    if (comparison.isEmpty()) {
      return "No differences.\n";
    }
    ChangeText text = new ChangeText(comparison);
    text.things();
    text.orders("To buy more", d -> d.signum() > 0);
    text.orders("To return or order less", d -> d.signum() < 0);
    text.otherOrders();
    text.hours();
    String currency = comparison.now().info().currency();
    text.figures(
        "Likely cost" + (currency.isEmpty() ? "" : ", " + currency),
        comparison.figures(Comparison.COST, "p50"));
    text.findings("Findings gone", comparison.gone());
    text.findings("Findings new", comparison.come());
    text.rest(all);
    return text.text.toString();
  }

  private void heading(String heading) {
    text.append(heading).append('\n');
  }

  private void line(String what, String old, String now, String difference) {
    text.append("  ").append(what).append(": ");
    text.append(old.isEmpty() ? "none" : old).append(" → ").append(now.isEmpty() ? "none" : now);
    text.append(difference.isEmpty() ? "" : "  (" + difference + ")").append('\n');
  }

  private void things() {
    if (!comparison.things().isEmpty()) {
      heading("Elements");
    }
    for (ThingChange change : comparison.things()) {
      String old = words.old(change);
      String now = words.now(change);
      String areas = old.isEmpty() || now.isEmpty() ? old + now : old + " → " + now;
      boolean tells = change.how() != ThingChange.How.RENAMED && !areas.isEmpty();
      String difference = words.difference(change);
      text.append("  ").append(ThingWords.how(change)).append("  ");
      text.append(ThingWords.what(change)).append(tells ? ", " + areas : "");
      boolean more = !difference.equals(ThingWords.how(change));
      text.append(more ? ": " + difference.replaceFirst("^moved ", "") : "").append('\n');
    }
  }

  private void orders(String heading, Predicate<BigDecimal> which) {
    figures(
        heading,
        comparison.figures(Comparison.ORDERS, "order").stream()
            .filter(f -> f.difference().filter(which).isPresent())
            .toList());
  }

  /** What changed its unit. */
  private void otherOrders() {
    figures(
        "To order otherwise",
        comparison.figures(Comparison.ORDERS, "order").stream()
            .filter(f -> f.difference().filter(d -> d.signum() != 0).isEmpty())
            .toList());
  }

  private void figures(String heading, List<FigureChange> figures) {
    if (!figures.isEmpty()) {
      heading(heading);
      figures.forEach(f -> line(f.row(), f.old(), f.now(), f.differenceText()));
    }
  }

  private void hours() {
    if (!comparison.hoursByPhase().isEmpty()) {
      heading("Likely hours by phase");
      comparison
          .hoursByPhase()
          .forEach(
              (phase, sums) ->
                  line(
                      phase,
                      sums.old() + " h",
                      sums.now() + " h",
                      ShownNumber.signed(sums.now().subtract(sums.old()), "") + " h"));
    }
  }

  private void findings(String heading, List<Snapshot.Remark> findings) {
    if (!findings.isEmpty()) {
      heading(heading);
      findings.forEach(f -> text.append("  ").append(f).append('\n'));
    }
  }

  private void rest(boolean all) {
    if (comparison.figures().isEmpty()) {
      return;
    }
    if (!all) {
      String tables =
          ChangeOrder.count(comparison).entrySet().stream()
              .map(e -> e.getKey() + " (" + e.getValue() + ")")
              .collect(Collectors.joining(", "));
      heading("Figures that are other, by table: " + tables + ". --all lists them.");
      return;
    }
    ResultGrid headed = null;
    for (FigureChange f : comparison.figures()) {
      if (headed == null || !headed.id().equals(f.table().id())) {
        headed = f.table();
        heading(headed.title());
      }
      line(f.row() + ", " + f.column().title(), f.old(), f.now(), f.differenceText());
    }
  }
}
