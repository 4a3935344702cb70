package yardloom.soil.region;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import yardloom.facts.YardFacts;
import yardloom.facts.region.LocalRate;
import yardloom.facts.region.Region;
import yardloom.facts.region.Spread;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Say;
import yardloom.kernel.table.SheetUse;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.vocab.Choices;
import yardloom.soil.texture.LocalSoil;
import yardloom.soil.texture.SoilChoice;

/** What the yard takes from the regional file, with sources; empty where no region is named. */
public final class RegionTable implements TableMaker {
  @Override
  public String id() {
    return "materials-region";
  }

  @Override
  public Optional<Audience> audience() {
    return Optional.of(Audience.CLIENT);
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.REGION, YardFacts.LOCAL_RATES);
  }

  @Override
  public Set<SheetUse> uses() {
    return Set.of(SheetPage.WORK_PLACE);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.REPORT;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Region")
            .column(Column.text("what", "What"))
            .column(Column.text("name", "Name"))
            .column(Column.text("says", "Says"))
            .column(Column.text("source", "Source"));
    Optional<Region> found = facts.find(YardFacts.REGION);
    if (found.isEmpty()) {
      return table.build();
    }
    Region region = found.get();
    row(table, "region", region.name(), region.about(), region.source());
    Optional<SoilChoice> chosen = plan.attributes().get(SoilChoice.KEY);
    UnitSystem units = plan.info().units();
    said(plan, region, LocalSoil.KEY)
        .filter(s -> chosen.filter(c -> c.name().equals(s.name())).isPresent())
        .forEach(s -> row(table, "soil", s.name(), says(s, units), s.source()));
    facts.all(YardFacts.LOCAL_RATES).stream()
        .filter(r -> region.says(r.place()))
        .sorted(
            Comparator.comparing((LocalRate r) -> r.kind() == LocalRate.Kind.PRICE)
                .thenComparing(r -> r.place().line())
                .thenComparing(r -> r.place().column()))
        .forEach(r -> rate(table, r));
    said(plan, region, LocalCheck.KEY)
        .forEach(c -> row(table, "check", c.name(), c.advice(), c.source()));
    return table.note("The plan's own statements go before the region's.").build();
  }

  private static <T> Stream<T> said(Plan plan, Region region, AttributeKey<T> key) {
    return plan.attributes().all(key).stream()
        .filter(e -> region.says(e.place()))
        .map(Attributes.Entry::value);
  }

  private static void row(
      Table.Builder table, String what, String name, String says, Source source) {
    table.row(Cell.text(what), Cell.text(name), Cell.text(says), Cell.text(source.cite()));
  }

  private static void rate(Table.Builder table, LocalRate rate) {
    String unit =
        switch (rate.kind()) {
          case LABOUR -> " h per " + rate.unit();
          case PRICE -> " per " + rate.unit();
          case LOAD, DENSITY -> " " + rate.unit();
        };
    row(
        table,
        Choices.text(rate.kind()),
        rate.item(),
        spread(rate.value(), unit),
        rate.value().source());
  }

  private static String spread(Spread s, String unit) {
    return number(s.likely()) + " (" + number(s.low()) + " to " + number(s.high()) + ")" + unit;
  }

  /** Hours for one square foot are small: three places that count. */
  private static String number(double value) {
    return Math.abs(value) >= 1
        ? Say.number(value)
        : String.format(Locale.ROOT, "%.3f", value).replaceFirst("\\.?0+$", "");
  }

  private static String says(LocalSoil s, UnitSystem units) {
    StringBuilder text = new StringBuilder();
    text.append("sand ").append(Say.number(s.sand())).append(" %, clay ");
    text.append(Say.number(s.clay())).append(" %, organic ").append(Say.number(s.organic()));
    text.append(" %");
    s.available().ifPresent(a -> text.append(", available water ").append(Say.percent(a)));
    s.intake()
        .ifPresent(
            i -> text.append(", intake ").append(Say.fineDepth(i, units)).append(" per hour"));
    return text.toString();
  }
}
