package yardloom.climate.frost;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import yardloom.climate.weather.DailyWeather;
import yardloom.climate.weather.WeatherWords;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;

/** Says which trees lack winter chill, and when a weather record is too short to tell. */
public final class ColdCheck implements Check {
  private static final Source CULTIVARS =
      Source.commonPractice("fruit trees with too little chill leaf out late and bear little");

  @Override
  public String id() {
    return "sun.chill";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(ColdAndWarmth.KEY);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> found = new ArrayList<>();
    Optional<ColdAndWarmth> cold = facts.find(ColdAndWarmth.KEY);
    Optional<DailyWeather> record = plan.said(WeatherWords.WEATHER).map(Attributes.Entry::value);
    if (record.isPresent() && cold.isEmpty()) {
      found.add(
          Finding.of(
              id(),
              Severity.WARNING,
              "the weather record has "
                  + record.get().days().size()
                  + " days and no complete year, so that nothing is taken from it",
              "give whole years of daily maximum and minimum",
              Source.plan("dailyWeather")));
    }
    for (Element.Tree tree : plan.all(Element.Tree.class)) {
      for (Entry<Double> need : tree.attributes().all(FrostWords.CHILL)) {
        cold.filter(c -> c.chillHours().value() < need.value())
            .ifPresent(c -> found.add(lacking(c, need).about(tree.id(), need.place())));
      }
    }
    return found;
  }

  private Finding lacking(ColdAndWarmth cold, Entry<Double> need) {
    return Finding.of(
        id(),
        Severity.WARNING,
        String.format(
            Locale.ROOT,
            "it asks for %.0f h of winter chill; a usual winter here has about %.0f h below 45 °F"
                + " (7 °C), by hours drawn between the days' extremes",
            need.value(),
            cold.chillHours().value()),
        "choose a variety that needs less chill",
        CULTIVARS);
  }
}
