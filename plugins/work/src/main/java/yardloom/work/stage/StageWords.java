package yardloom.work.stage;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.kernel.vocab.YearDays;

/** The word about what is made when. */
public final class StageWords {
  private static final int MOST = 8;

  private StageWords() {}

  @Verb(
      help =
          "Says what is made together, in a yard that is made over several years: whatever its"
              + " block draws, counts or plants is bought, worked and ordered in this stage. Stages"
              + " follow each other as written; what stands outside of them belongs to the first.",
      example =
          "stage('second year', from: '2028-03-06') { bed('front', rect(30.ft, 4.ft, 20.ft, 4.ft))"
              + " }")
  public static void stage(
      PlanScope plan,
      @Arg(name = "name", help = "how tables call it, such as 'first year'") String name,
      @Opt(
              name = "from",
              help = "its first day, as year-month-day",
              fallback = "that of `work`, then a year after the stage before")
          String from,
      @Opt(
              name = "built",
              help = "whether it stands already: looked after, not bought or worked",
              fallback = "false")
          Boolean built,
      @Arg(name = "block", help = "what is made in it") Consumer<PlanScope> block) {
    Making.name("stage", name);
    if (block == null) {
      // The JSON form of a plan can leave it out.
      throw new PlanException(
          ProblemCode.MISSING_OPTION,
          plan.place(),
          "stage '" + name + "' has no block; give what is made in it");
    }
    boolean isBuilt = Boolean.TRUE.equals(built);
    Optional<LocalDate> day = day(plan, from);
    if (isBuilt && day.isPresent()) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          plan.place(),
          "stage '" + name + "' is built, so it has no first day; leave out `from` or `built`");
    }
    List<Attributes.Entry<Stage>> before = plan.draft().attributes().all(Stage.KEY);
    for (Attributes.Entry<Stage> earlier : before) {
      if (earlier.value().name().equals(name)) {
        throw new PlanException(
            ProblemCode.DUPLICATE,
            plan.place(),
            "stage '"
                + name
                + "' is already given at "
                + earlier.place()
                + "; one block has all of it");
      }
      if (day.isPresent()
          && earlier.value().from().filter(f -> !f.isBefore(day.get())).isPresent()) {
        throw new PlanException(
            ProblemCode.OUT_OF_RANGE,
            plan.place(),
            "stage '"
                + name
                + "' begins "
                + day.get()
                + ", not after stage '"
                + earlier.value().name()
                + "' ("
                + earlier.value().from().get()
                + "); write stages in the order in which they are made");
      }
    }
    if (before.size() >= MOST) {
      throw new PlanException(
          ProblemCode.LIMIT, plan.place(), "a plan has at most " + MOST + " stages");
    }
    plan.draft().inPart(name, isBuilt, plan.place(), () -> block.accept(plan));
    plan.draft().attributes().add(Stage.KEY, new Stage(name, day, isBuilt), plan.place());
  }

  private static Optional<LocalDate> day(PlanScope plan, String from) {
    return Optional.ofNullable(from).map(text -> YearDays.date(plan.place(), text, "2028-03-06"));
  }
}
