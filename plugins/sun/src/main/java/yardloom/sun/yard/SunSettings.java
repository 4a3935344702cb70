package yardloom.sun.yard;

import java.time.MonthDay;
import java.util.Comparator;
import java.util.List;
import yardloom.facts.Obstacle.Stage;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Choices;
import yardloom.sun.light.LightScheme;
import yardloom.sun.light.LightSchemes;
import yardloom.sun.light.LightWords;
import yardloom.sun.position.Dates;
import yardloom.sun.yard.YardWords.Fall;
import yardloom.sun.yard.YardWords.Skyline;

/**
 * What the plan asks of the sun plugin, with what holds when it says nothing.
 *
 * @param cell size of the cells in which sun is worked out
 * @param skyline distant horizon in order of bearing
 * @param season the days over which sun is judged
 * @param stage how far the planned plants have grown
 */
public record SunSettings(
    Length cell,
    List<Skyline> skyline,
    LightScheme scheme,
    Dates season,
    java.util.Optional<Fall> fall,
    Stage stage) {
  private static final Dates NORTH = new Dates(MonthDay.of(4, 1), MonthDay.of(9, 30));
  private static final Dates SOUTH = new Dates(MonthDay.of(10, 1), MonthDay.of(3, 31));

  public static SunSettings of(Plan plan) {
    Attributes said = plan.attributes();
    boolean south = plan.isSouthern();
    return new SunSettings(
        said.get(YardWords.CELL).orElse(Length.feet(1)),
        said.all(YardWords.SKYLINE).stream()
            .map(Attributes.Entry::value)
            .sorted(Comparator.comparing(Skyline::bearing))
            .toList(),
        said.get(LightWords.SCHEME).orElseGet(() -> LightSchemes.named("temperate")),
        said.get(YardWords.SEASON).orElse(south ? SOUTH : NORTH),
        said.get(YardWords.FALL),
        said.get(YardWords.STAGE).map(s -> Choices.parse(Stage.class, s)).orElse(Stage.MATURE));
  }
}
