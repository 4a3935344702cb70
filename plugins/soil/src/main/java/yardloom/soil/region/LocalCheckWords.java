package yardloom.soil.region;

import java.util.Locale;
import java.util.Optional;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The word for what must be so where the yard lies, as a place's code or good practice has it. */
public final class LocalCheckWords {
  private LocalCheckWords() {}

  @Verb(
      help = "States a check: what is found when all its conditions hold for an element.",
      example =
          "localCheck('basins off walls', kind: 'bed', named: 'basin', nearer: 10.ft,"
              + " to: 'building', say: 'Water soaks in near a wall.', advice: 'Move the basin.',"
              + " source: publication('Rain gardens', by: 'extension', seen: 'read'))")
  public static void localCheck(
      PlanScope plan,
      @Arg(name = "name", help = "its name in findings") String name,
      @Opt(
              name = "kind",
              help = "what it looks at",
              required = true,
              choices = LocalCheck.Subject.class)
          String kind,
      @Opt(name = "named", help = "only those whose name holds this", fallback = "all")
          String named,
      @Opt(name = "nearer", help = "nearer than this …", fallback = "any distance") Length nearer,
      @Opt(
              name = "to",
              help = "… to the nearest of these",
              fallback = "none",
              choices = LocalCheck.Target.class)
          String to,
      @Opt(name = "toNamed", help = "only those whose name holds this", fallback = "all")
          String toNamed,
      @Opt(
              name = "whenIntakeBelow",
              help = "only where soil takes in less in an hour",
              fallback = "any soil")
          Length whenIntakeBelow,
      @Opt(name = "say", help = "what is wrong, in a sentence", required = true) String say,
      @Opt(name = "advice", help = "what to do about it", required = true) String advice,
      @Opt(name = "source", help = "as `publication` names it", required = true) Source source) {
    String slug =
        name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    Cite.say(plan, "a check needs a name in letters, what to say and an advice", slug, say, advice);
    if ((nearer == null) != (to == null)) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION,
          plan.place(),
          "`nearer:` and `to:` go together, as in nearer: 10.ft, to: 'building'");
    }
    if (toNamed != null && to == null) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION,
          plan.place(),
          "`toNamed:` says which of the things that `to:` names; give `nearer:` and `to:` too");
    }
    if (nearer == null && whenIntakeBelow == null) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION,
          plan.place(),
          "a check needs a condition: `nearer:` with `to:`, or `whenIntakeBelow:`");
    }
    positive(plan, "nearer", nearer);
    positive(plan, "whenIntakeBelow", whenIntakeBelow);
    plan.draft()
        .attributes()
        .add(
            LocalCheck.KEY,
            new LocalCheck(
                name,
                "region." + slug,
                Choices.parse(LocalCheck.Subject.class, kind).kind(),
                named == null ? "" : named,
                Optional.ofNullable(nearer).map(d -> nearer(d, to, toNamed)),
                Optional.ofNullable(whenIntakeBelow),
                say,
                advice,
                source,
                plan.place()),
            plan.place());
  }

  private static LocalCheck.Nearer nearer(Length than, String to, String toNamed) {
    return new LocalCheck.Nearer(
        than, Choices.parse(LocalCheck.Target.class, to), toNamed == null ? "" : toNamed);
  }

  private static void positive(PlanScope plan, String option, Length length) {
    if (length != null && length.metres() <= 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, plan.place(), "`" + option + ":` must be more than 0");
    }
  }
}
