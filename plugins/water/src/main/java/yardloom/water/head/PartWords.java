package yardloom.water.head;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.OwnTable;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OwnColumns;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Pressure;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The words for parts at the tap that are not the usual ones. */
public final class PartWords {
  private static final Pressure MOST_LOSS = Pressure.psi(40);
  private static final List<String> LOSS = List.of("psi", "kPa");
  private static final List<String> AT = List.of("gpm", "lph");

  private PartWords() {}

  @Verb(
      help =
          "Gives a part of the head assembly that you have or add, with what it takes of the"
              + " pressure as its maker says.",
      example =
          "headPart('disc filter', like: 'filter', loss: 1.2.psi, at: 4.gpm,"
              + " source: publication('Leaflet', by: 'its maker', seen: 'read'))")
  public static void headPart(
      PlanScope plan,
      @Arg(name = "name", help = "as table and bill call it") String name,
      @Opt(
              name = "like",
              help = "the usual part whose place it takes, such as 'filter'",
              fallback = "none: say `after:`")
          String like,
      @Opt(
              name = "after",
              help = "the usual part that it stands behind, where it is added",
              fallback = "none: say `like:`")
          String after,
      @Opt(
              name = "loss",
              help = "pressure that it takes, clean",
              fallback = "as the part that it is like")
          Pressure loss,
      @Opt(
              name = "at",
              help = "the flow at which it takes that, with `loss:`",
              fallback = "as the part that it is like")
          Flow at,
      @Opt(name = "purpose", help = "what it is for", fallback = "as the part that it is like")
          String purpose,
      @Opt(name = "source", help = "as `publication` names it", fallback = "the plan")
          Source source) {
    OwnTable.ofOne(
        plan,
        "head part",
        source,
        from ->
            add(
                plan,
                plan.place(),
                new Said(
                    name,
                    Optional.ofNullable(like),
                    Optional.ofNullable(after),
                    Optional.ofNullable(loss),
                    Optional.ofNullable(at),
                    Optional.ofNullable(purpose),
                    from)));
  }

  @Verb(
      help =
          "Takes parts of the head assembly from a table: columns part, like or after, loss_psi or"
              + " loss_kPa, at_gpm or at_lph, purpose, and those of a source.",
      example = "headParts('part,after,loss_psi,at_gpm,purpose\\nmeter,timer,0.8,5,counts')")
  public static void headParts(
      PlanScope plan,
      @Arg(name = "csv", help = "the table, as from fileText('parts.csv')") String csv,
      @Opt(name = "name", help = "the file's name, for messages", fallback = "head parts")
          String name) {
    List<String> may = new ArrayList<>(List.of("like", "after", "purpose"));
    may.addAll(OwnColumns.columns("loss", LOSS));
    may.addAll(OwnColumns.columns("at", AT));
    OwnTable table = OwnTable.of(plan, csv, name, "head parts");
    table.each(List.of("part"), may, row -> read(plan, row, row.sourceOr(table.source())));
  }

  private static void read(PlanScope plan, DataRow row, Source source) {
    add(
        plan,
        row.placeOf("part"),
        new Said(
            row.text("part"),
            OwnColumns.text(row, "like"),
            OwnColumns.text(row, "after"),
            OwnColumns.measured(row, "loss", LOSS).map(Pressure::pascals),
            OwnColumns.measured(row, "at", AT).map(Flow::cubicMetresPerSecond),
            OwnColumns.text(row, "purpose"),
            source));
  }

  /** A part as word or row says it. */
  private record Said(
      String name,
      Optional<String> like,
      Optional<String> after,
      Optional<Pressure> loss,
      Optional<Flow> at,
      Optional<String> purpose,
      Source source) {}

  private static void add(PlanScope plan, SourceRef at, Said said) {
    if (said.like.isPresent() == said.after.isPresent()) {
      throw missing(
          "a part is `like:` the usual one whose place it takes, or stands `after:` it; say one of"
              + " them");
    }
    if (said.loss.isPresent() != said.at.isPresent()) {
      throw missing("what a part takes holds at a flow: `loss:` and `at:` go together");
    }
    boolean isAdded = said.after.isPresent();
    if (isAdded && (said.loss.isEmpty() || said.purpose.isEmpty())) {
      throw missing("a part that is added needs its `loss:` at a flow, and its `purpose:`");
    }
    HeadPart usual = usual(said.like.or(() -> said.after).orElseThrow());
    check(said);
    HeadPart part =
        new HeadPart(
            Making.name("part", said.name),
            isAdded ? HeadPart.Kind.OTHER : usual.kind(),
            said.loss.orElse(usual.loss()),
            said.at.orElse(usual.at()),
            said.purpose.orElse(usual.purpose()),
            usual.isInEachZone(),
            true,
            said.loss.isPresent() ? said.source : usual.source());
    OwnPart own = new OwnPart(part, usual.name(), isAdded, plan.place());
    Making.once(plan, at, OwnPart.KEY, own::isSame, "a part '" + said.name + "', or in its place,");
    plan.draft().attributes().add(OwnPart.KEY, own, plan.place());
  }

  private static HeadPart usual(String name) {
    HeadPart usual = HeadPart.of(name);
    if (usual == null) {
      String hint = Nearest.hint(name, HeadPart.names());
      throw new PlanException(
          ProblemCode.UNKNOWN_WORD,
          "no usual part is called '"
              + name
              + "'."
              + (hint.isEmpty() ? " There is " + String.join(", ", HeadPart.names()) + "." : hint));
    }
    return usual;
  }

  private static void check(Said said) {
    said.loss
        .filter(p -> p.compareTo(Pressure.ZERO) < 0 || p.compareTo(MOST_LOSS) > 0)
        .ifPresent(
            p -> {
              throw new PlanException(
                  ProblemCode.OUT_OF_RANGE,
                  String.format(
                      Locale.ROOT,
                      "a part takes 0 to %s, got %s; check the" + " unit",
                      Say.both(Measure.SET_PRESSURE, MOST_LOSS),
                      Say.both(Measure.PRESSURE, p)));
            });
    said.at.ifPresent(HeadWords::check);
  }

  private static PlanException missing(String what) {
    return new PlanException(ProblemCode.MISSING_OPTION, what);
  }
}
