package yardloom.site.setback;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.EdgeRole;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.Limits;
import yardloom.kernel.scope.LotScope;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Scope;
import yardloom.kernel.vocab.Verb;
import yardloom.site.setback.SetbackRule.MeasuredTo;

/** Words for the sides of the lot and the setbacks that codes ask of them. */
public final class SideWords {
  /** As many sides a message lists; a traced outline has hundreds. */
  private static final int MOST_NAMES = 12;

  private SideWords() {}

  @Verb(
      help = "Says what a side of the lot is and how far to keep away from it.",
      example = "side('south', role: 'front', setback: 25.ft, rule: 'zoning sheet of the city')")
  public static void side(
      LotScope in,
      @Arg(name = "name", help = "which side") String name,
      @Opt(
              name = "role",
              help = "what the side is in the setback rules; always stated, never guessed",
              required = true,
              choices = EdgeRole.class)
          String role,
      @Opt(
              name = "setback",
              help = "how far buildings and beds keep away from it",
              fallback = "what `setbackFor` asks of its role, or nothing")
          Length setback,
      @Opt(name = "rule", help = "who asks for the setback", fallback = "none") String rule,
      @Opt(
              name = "datum",
              help = "the line that the code measures the setback from",
              fallback = "lot line",
              choices = Datum.class)
          String datum,
      @Opt(
              name = "outside",
              help = "how far that line runs outside of the lot",
              fallback = "0; required unless the datum is the lot line")
          Length outside,
      @Opt(
              name = "to",
              help = "what the setback is measured to",
              fallback = "wall",
              choices = MeasuredTo.class)
          String to) {
    Lot.Edge edge = undescribed(in, name);
    EdgeRole is = Choices.parse(EdgeRole.class, role);
    boolean own = setback != null || rule != null || datum != null || to != null;
    List<SetbackRule.ForRole> asked =
        askedOf(in, is).stream().filter(a -> a.band().isPresent() || !own).toList();
    List<SetbackRule> rules = new ArrayList<>();
    if (asked.stream().allMatch(a -> a.band().isPresent())) {
      Datum from = Choices.parse(Datum.class, datum, Datum.LOT_LINE);
      rules.add(
          new SetbackRule(
              name,
              is,
              Limits.zeroOrMore("a setback", Limits.or(setback, Length.ZERO), Limits.SETBACK),
              from,
              from.outside(in, own || asked.isEmpty() ? outside : null),
              Choices.parse(MeasuredTo.class, to, MeasuredTo.WALL),
              Optional.empty(),
              Limits.or(rule, "")));
    }
    asked.forEach(a -> rules.add(a.at(name, a.datum().outside(in, ownDatum(a.datum(), outside)))));
    if (rules.stream().allMatch(r -> r.datum() == Datum.LOT_LINE)) {
      Datum.LOT_LINE.outside(in, outside);
    }
    rules.forEach(r -> in.draft().attributes().add(SetbackRule.KEY, r, in.place()));
    describe(in, edge, is, rules);
  }

  /** The side of a name that no `side` has described yet. */
  private static Lot.Edge undescribed(LotScope in, String name) {
    Lot.Edge edge = edge(in, in.draft().lot().orElseThrow(), name);
    if (edge.role() != EdgeRole.UNSTATED) {
      throw new PlanException(
          ProblemCode.DUPLICATE, in.place(), "the side '" + name + "' is described twice");
    }
    return edge;
  }

  /** Gives the lot's side its role and the setback that holds at all heights. */
  private static void describe(LotScope in, Lot.Edge edge, EdgeRole role, List<SetbackRule> rules) {
    SetbackRule base = rules.stream().filter(r -> r.band().isEmpty()).findFirst().orElseThrow();
    Lot.Edge now =
        new Lot.Edge(edge.name(), edge.line(), role, base.fromLotLine(), base.rule(), edge.arc());
    Lot lot = in.draft().lot().orElseThrow();
    List<Lot.Edge> edges =
        lot.edges().stream().map(e -> e.name().equals(edge.name()) ? now : e).toList();
    in.draft().relot(new Lot(lot.place(), lot.shape(), edges));
  }

  /** A rule measured from the lot line has no use for the distance of another line. */
  private static Length ownDatum(Datum datum, Length outside) {
    return datum == Datum.LOT_LINE ? null : outside;
  }

  /** What was asked of a role: of two statements about the same heights the later one holds. */
  private static List<SetbackRule.ForRole> askedOf(LotScope in, EdgeRole role) {
    List<SetbackRule.ForRole> asked = new ArrayList<>();
    for (Attributes.Entry<SetbackRule.ForRole> entry :
        in.draft().attributes().all(SetbackRule.ForRole.KEY)) {
      if (entry.value().role() == role) {
        asked.removeIf(a -> a.band().equals(entry.value().band()));
        asked.add(entry.value());
      }
    }
    return asked;
  }

  @Verb(
      help =
          "A further setback of a side that holds only above or below a height, such as for upper"
              + " floors. Give the side first.",
      example = "setback('east', distance: 15.ft, above: 16.ft, rule: 'zoning sheet of the city')")
  public static void setback(
      LotScope in,
      @Arg(name = "side", help = "which side") String side,
      @Opt(name = "distance", help = "how far buildings keep away", required = true)
          Length distance,
      @Opt(
              name = "above",
              help = "height above ground from which on it holds",
              fallback = "0: from the ground on; `above:` or `below:` is needed")
          Length above,
      @Opt(name = "below", help = "height up to which it holds", fallback = "any height")
          Length below,
      @Opt(
              name = "datum",
              help = "the line that the code measures it from",
              fallback = "lot line",
              choices = Datum.class)
          String datum,
      @Opt(
              name = "outside",
              help = "how far that line runs outside of the lot",
              fallback = "0; required unless the datum is the lot line")
          Length outside,
      @Opt(
              name = "to",
              help = "what it is measured to",
              fallback = "wall",
              choices = MeasuredTo.class)
          String to,
      @Opt(name = "rule", help = "who asks for it", fallback = "none: verify locally")
          String rule) {
    Lot.Edge edge = edge(in, in.draft().lot().orElseThrow(), side);
    if (edge.role() == EdgeRole.UNSTATED) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION,
          in.place(),
          "say first what the side is, as in side('" + side + "', role: 'rear')");
    }
    if (above == null && below == null) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION,
          in.place(),
          "a further setback needs `above:` or `below:`, the height from which on or up to which it"
              + " holds; one for all heights is given as `setback:` of the side");
    }
    Datum from = Choices.parse(Datum.class, datum, Datum.LOT_LINE);
    in.draft()
        .attributes()
        .add(
            SetbackRule.KEY,
            new SetbackRule(
                side,
                edge.role(),
                Limits.positive("a setback", distance, Limits.SETBACK),
                from,
                from.outside(in, outside),
                Choices.parse(MeasuredTo.class, to, MeasuredTo.WALL),
                band(in, above, below),
                Limits.or(rule, "")),
            in.place());
  }

  @Verb(
      help =
          "The setback that a code asks of every side with a role. A regional file states it; a side"
              + " of the lot that gives its own setback goes first. Stand it before the lot.",
      example = "setbackFor('front', distance: 25.ft, rule: 'zoning sheet of the city')")
  public static void setbackFor(
      PlanScope in,
      @Arg(name = "role", help = "which sides", choices = EdgeRole.class) String role,
      @Opt(name = "distance", help = "how far to keep away", required = true) Length distance,
      @Opt(
              name = "above",
              help = "height above ground from which on it holds",
              fallback = "all heights")
          Length above,
      @Opt(name = "below", help = "height up to which it holds", fallback = "all heights")
          Length below,
      @Opt(
              name = "datum",
              help =
                  "the line that the code measures it from; but for the lot line, the side says how"
                      + " far `outside:` it runs",
              fallback = "lot line",
              choices = Datum.class)
          String datum,
      @Opt(
              name = "to",
              help = "what it is measured to",
              fallback = "wall",
              choices = MeasuredTo.class)
          String to,
      @Opt(name = "rule", help = "who asks for it", required = true) String rule) {
    if (in.draft().lot().isPresent()) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          in.place(),
          "`setbackFor` must stand before the lot, whose sides take it; move it, or the `include` of"
              + " the file with it, up");
    }
    SetbackRule.ForRole asked =
        new SetbackRule.ForRole(
            Choices.parse(EdgeRole.class, role),
            Limits.zeroOrMore("a setback", distance, Limits.SETBACK),
            Choices.parse(Datum.class, datum, Datum.LOT_LINE),
            Choices.parse(MeasuredTo.class, to, MeasuredTo.WALL),
            band(in, above, below),
            rule);
    Making.once(
        in,
        SetbackRule.ForRole.KEY,
        a -> a.role() == asked.role() && a.band().equals(asked.band()),
        "the setback of a " + role + " side");
    in.draft().attributes().add(SetbackRule.ForRole.KEY, asked, in.place());
  }

  private static Optional<Restriction.Band> band(Scope in, Length above, Length below) {
    if (above == null && below == null) {
      return Optional.empty();
    }
    Length from = Limits.zeroOrMore("`above:`", Limits.or(above, Length.ZERO), Limits.BUILT_HEIGHT);
    Length to =
        Limits.positive("`below:`", Limits.or(below, Limits.BUILT_HEIGHT), Limits.BUILT_HEIGHT);
    if (to.compareTo(from) <= 0) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          in.place(),
          "`below:` at "
              + Limits.show(to)
              + " must lie higher than `above:` at "
              + Limits.show(from));
    }
    return Optional.of(new Restriction.Band(from, to));
  }

  static Lot.Edge edge(LotScope in, Lot lot, String name) {
    List<String> names = lot.edges().stream().map(Lot.Edge::name).toList();
    int at = names.indexOf(name);
    if (at < 0) {
      throw new PlanException(
          ProblemCode.UNKNOWN_WORD,
          in.place(),
          "the lot has no side '"
              + name
              + "'; it has "
              + String.join(", ", names.subList(0, Math.min(names.size(), MOST_NAMES)))
              + (names.size() > MOST_NAMES ? " and " + (names.size() - MOST_NAMES) + " more" : "")
              + "."
              + Nearest.hint(name, names));
    }
    return lot.edges().get(at);
  }
}
