package yardloom.planting.suggest;

import java.time.Month;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The word that asks for plants. */
public final class SuggestWords {
  private static final int FEWEST = 2;
  private static final int MOST = 5;
  private static final int USUAL = 4;
  private static final double USUAL_SHARE = 0.5;

  private SuggestWords() {}

  @Verb(
      help = "Asks for kinds that suit the bed and each other; the table of suggestions has them.",
      example = "suggest kinds: 4, perennials: 0.75, harvest: 'May to October', natives: false")
  public static void suggest(
      BedScope bed,
      @Opt(name = "kinds", help = "how many, 2 to 5", fallback = "4") Number kinds,
      @Opt(
              name = "perennials",
              help = "least share of the kinds that stays for years, 0 to 1",
              fallback = "0.5")
          Number perennials,
      @Opt(
              name = "harvest",
              help = "months in which something should be picked, such as 'May to October'",
              fallback = "all year")
          String harvest,
      @Opt(
              name = "littleWork",
              help = "whether all should stay for years and none run",
              fallback = "false")
          Boolean littleWork,
      @Opt(
              name = "natives",
              help =
                  "whether all should be native to the part of North America where the yard lies",
              fallback = "false")
          Boolean natives) {
    double count = kinds == null ? USUAL : kinds.doubleValue();
    double share = perennials == null ? USUAL_SHARE : perennials.doubleValue();
    if (count != Math.rint(count) || count < FEWEST || count > MOST) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, bed.place(), "kinds must be 2, 3, 4 or 5, got " + kinds);
    }
    if (!(share >= 0 && share <= 1)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, bed.place(), "perennials must be 0 to 1, got " + perennials);
    }
    if (bed.element().attributes().has(Wish.KEY)) {
      throw new PlanException(
          ProblemCode.DUPLICATE, bed.place(), bed.element().id() + " already asks for plants");
    }
    Wish wish =
        new Wish(
            (int) count,
            share,
            harvest == null ? EnumSet.allOf(Month.class) : months(harvest, bed),
            Boolean.TRUE.equals(littleWork),
            Boolean.TRUE.equals(natives));
    bed.element().attributes().add(Wish.KEY, wish, bed.place());
  }

  /** {@code May}, or {@code May to October}; the latter may run across New Year. */
  private static Set<Month> months(String text, BedScope bed) {
    String[] ends = text.trim().split("\\s+to\\s+");
    Month from = month(ends[0], text, bed);
    Month until = month(ends[ends.length - 1], text, bed);
    Set<Month> months = EnumSet.of(from);
    for (Month m = from; m != until; m = m.plus(1)) {
      months.add(m.plus(1));
    }
    return months;
  }

  private static Month month(String name, String text, BedScope bed) {
    String start = name.trim().toUpperCase(Locale.ROOT);
    for (Month month : Month.values()) {
      if (start.length() >= 3 && month.name().startsWith(start)) {
        return month;
      }
    }
    throw new PlanException(
        ProblemCode.UNKNOWN_WORD,
        bed.place(),
        "harvest takes a month or two with `to` between, such as 'May to October'; got '"
            + text
            + "'");
  }
}
