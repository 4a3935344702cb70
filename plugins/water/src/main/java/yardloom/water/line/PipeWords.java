package yardloom.water.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The words for sizes of pipe that the shipped table lacks or that are sold otherwise here. */
public final class PipeWords {
  private static final Length NARROWEST = Length.millimetres(2);
  private static final Length WIDEST = Length.millimetres(110);
  private static final Length SHORTEST_ROLL = Length.metres(1);
  private static final Length LONGEST_ROLL = Length.metres(500);
  private static final List<String> BORE = List.of("in", "mm");
  private static final List<String> ROLL = List.of("ft", "m");

  private PipeWords() {}

  @Verb(
      help =
          "Gives a size of pipe that is sold here, beside the shipped ones; it takes the place of"
              + " one with its name or bore.",
      example =
          "pipeSize('25 mm PN10', bore: 20.4.mm, roll: 50.m, tube: 'pressure pipe',"
              + " source: publication('Price list', by: 'a pipe yard', seen: 'memory'))")
  public static void pipeSize(
      PlanScope plan,
      @Arg(name = "name", help = "as tables and bill call it") String name,
      @Opt(name = "bore", help = "width inside", required = true) Length bore,
      @Opt(
              name = "roll",
              help = "length that is sold in one piece",
              fallback = "100 ft, in metric plans 25 m")
          Length roll,
      @Opt(name = "tube", help = "what kind of pipe it is", fallback = "polyethylene tube")
          String tube,
      @Opt(name = "source", help = "as `publication` names it", fallback = "the plan")
          Source source) {
    OwnTable.ofOne(
        plan,
        "pipe size",
        source,
        from ->
            add(
                plan,
                plan.place(),
                name,
                bore,
                Optional.ofNullable(roll),
                Optional.ofNullable(tube),
                from));
  }

  @Verb(
      help =
          "Takes sizes of pipe from a table: columns size and bore_in or bore_mm, and where wanted"
              + " roll_ft or roll_m, tube, and those of a source.",
      example = "pipeSizes('size,bore_mm,roll_m\\n40 mm,35.2,100')")
  public static void pipeSizes(
      PlanScope plan,
      @Arg(name = "csv", help = "the table, as from fileText('pipes.csv')") String csv,
      @Opt(name = "only", help = "whether no other size is sold here", fallback = "false")
          Boolean only,
      @Opt(name = "name", help = "the file's name, for messages", fallback = "pipe sizes")
          String name) {
    List<String> may = new ArrayList<>(OwnColumns.columns("bore", BORE));
    may.addAll(OwnColumns.columns("roll", ROLL));
    may.add("tube");
    OwnTable table = OwnTable.of(plan, csv, name, "pipe sizes");
    table.each(List.of("size"), may, row -> read(plan, row, row.sourceOr(table.source())));
    if (only != null && only) {
      plan.draft().attributes().add(PipeSize.ONLY_OWN, true, plan.place());
    }
  }

  private static void read(PlanScope plan, DataRow row, Source source) {
    double boreM =
        OwnColumns.measured(row, "bore", BORE)
            .orElseThrow(
                () ->
                    new PlanException(
                        ProblemCode.MISSING_OPTION,
                        "a size of pipe needs its bore, in a column `bore_in` or `bore_mm`"));
    add(
        plan,
        row.placeOf("size"),
        row.text("size"),
        Length.metres(boreM),
        OwnColumns.measured(row, "roll", ROLL).map(Length::metres),
        OwnColumns.text(row, "tube"),
        source);
  }

  private static void add(
      PlanScope plan,
      SourceRef at,
      String name,
      Length bore,
      Optional<Length> roll,
      Optional<String> tube,
      Source source) {
    PipeSize size =
        new PipeSize(
            Making.name("size of pipe", name),
            within(bore, NARROWEST, WIDEST, "the bore of pipe"),
            within(
                roll.orElseGet(() -> PipeSize.usualRoll(plan.draft().info().units())),
                SHORTEST_ROLL,
                LONGEST_ROLL,
                "a roll of pipe"),
            tube.map(t -> Making.name("kind of pipe", t)).orElse(PipeSize.USUAL_TUBE),
            source);
    Making.once(
        plan, at, PipeSize.OWN, size::isSame, "the pipe size '" + name + "', or one so wide,");
    plan.draft().attributes().add(PipeSize.OWN, size, plan.place());
  }

  private static Length within(Length given, Length least, Length most, String what) {
    if (given.compareTo(least) < 0 || given.compareTo(most) > 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          what
              + " is "
              + both(least)
              + " to "
              + both(most)
              + ", got "
              + both(given)
              + "; check the unit");
    }
    return given;
  }

  private static String both(Length length) {
    return Say.both(length.metres() < 0.5 ? Measure.BORE : Measure.LENGTH, length);
  }
}
