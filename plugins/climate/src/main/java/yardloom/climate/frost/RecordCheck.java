package yardloom.climate.frost;

import java.util.ArrayList;
import java.util.List;
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
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;

/** Says when a weather record is too short to tell anything. */
public final class RecordCheck implements Check {
  @Override
  public String id() {
    return "climate.record";
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
    return found;
  }
}
