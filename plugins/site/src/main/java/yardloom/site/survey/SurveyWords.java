package yardloom.site.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.Limits;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.survey.Baseline;
import yardloom.kernel.survey.TapeFix;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Scope;
import yardloom.kernel.vocab.Verb;

/** Words for points measured with a tape. */
public final class SurveyWords {
  private SurveyWords() {}

  @Verb(
      help =
          "A point measured by tapes from known points. More than two tapes check each other; what"
              + " they disagree is printed and shared out.",
      example =
          "def corner = tied('house corner', near: point(20.ft, 15.ft)) { tape(a, 25.03.ft) ;"
              + " tape(b, 42.69.ft) }")
  public static Point tied(
      PlanScope in,
      @Arg(name = "name", help = "how tables call the point") String name,
      @Opt(
              name = "near",
              help = "roughly where it is; needed when the tapes fit on two sides",
              fallback = "the side on which all tapes fit best")
          Point near,
      Consumer<TieScope> block) {
    List<TapeFix.Tape> tapes = new ArrayList<>();
    if (block != null) {
      block.accept(new TieScope(tapes, in.place()));
    }
    Making.name("tied point", name);
    TapeFix fix;
    try {
      fix = TapeFix.of(tapes, Optional.ofNullable(near));
    } catch (PlanException e) {
      throw e.at(in.place());
    }
    in.draft().attributes().add(SurveyNotes.TIES, new SurveyNotes.Tied(name, fix), in.place());
    return fix.at();
  }

  @Verb(help = "A tape from a known point.", example = "tape(a, 25.03.ft, name: 'SW stake')")
  public static void tape(
      TieScope in,
      @Arg(name = "from", help = "the known point") Point from,
      @Arg(name = "distance", help = "the level distance measured") Length distance,
      @Opt(name = "name", help = "how the known point is called", fallback = "tape 1, tape 2 …")
          String name,
      @Opt(
              name = "error",
              help = "expected standard error of this tape",
              fallback = "20 mm (0.07 ft), common practice")
          Length error) {
    String called = Limits.or(name, "tape " + (in.tapes().size() + 1));
    in.tapes()
        .add(
            new TapeFix.Tape(
                called,
                from,
                Limits.positive("the length of a tape", distance, Limits.REACH),
                Limits.or(error, TapeFix.USUAL_ERROR)));
  }

  @Verb(
      help = "A point by its distance along a baseline and its square offset from it.",
      example = "offsetFrom(a, b, along: 30.ft, left: 6.5.ft)")
  public static Point offsetFrom(
      Scope in,
      @Arg(name = "start", help = "where the baseline starts") Point start,
      @Arg(name = "end", help = "where the baseline leads") Point end,
      @Opt(name = "along", help = "distance along the baseline", required = true) Length along,
      @Opt(name = "left", help = "offset to the left of its direction", fallback = "0") Length left,
      @Opt(name = "right", help = "offset to the right of its direction", fallback = "0")
          Length right) {
    if (left != null && right != null) {
      throw new PlanException(
          ProblemCode.CONTRADICTION, "an offset lies to the left or to the right, not both");
    }
    Length away = left != null ? left : Limits.or(right, Length.ZERO).negative();
    return new Baseline(start, end).at(along, away);
  }
}
