package yardloom.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.ClimateNormals;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.source.Source.Standing;
import yardloom.water.roof.RoofShares;

/** Says what the water figures lack: a climate, a site, verified data. */
public final class WaterChecks implements Check {
  private static final double TROPIC_DEG = 23.44;
  private static final Source SEASONS =
      Source.commonPractice("summer is in July in the north and in January in the south");
  private static final Source SAID = Source.commonPractice("what is missing or unverified is said");

  @Override
  public String id() {
    return "water.data";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.CLIMATE);
  }

  @Override
  public Set<FactKey<?>> explains() {
    return Set.of(YardFacts.CLIMATE);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    boolean concerned =
        !plan.all(Element.Bed.class).isEmpty() || !plan.all(Element.Roof.class).isEmpty();
    if (!concerned) {
      return List.of();
    }
    Optional<ClimateNormals> climate = facts.find(YardFacts.CLIMATE);
    if (climate.isEmpty()) {
      return List.of(
          note(
              "no climate is named, so water need and roof yield are not calculated",
              "add a line such as: climate 'urbana-il', or your place's figures by `climateNormals`"));
    }
    List<Finding> found = new ArrayList<>();
    if (plan.site().isEmpty()) {
      found.add(
          note(
              "no site is given, so evapotranspiration and water need are not calculated",
              "give the site with its latitude"));
    }
    otherHemisphere(plan, climate.get()).ifPresent(found::add);
    for (Element.Roof roof : plan.all(Element.Roof.class)) {
      if (RoofShares.of(plan, roof) == RoofShares.ANY_ROOF) {
        found.add(
            note(
                    "no share of rain is known for '"
                        + roof.surface()
                        + "'; "
                        + RoofShares.ANY_ROOF.value()
                        + " is taken",
                    "name one of " + String.join(", ", RoofShares.surfaces()))
                .about(roof.id(), roof.place()));
      }
    }
    unverified(found, "rain and temperature", climate.get().source());
    unverified(found, "the daily temperature range", climate.get().temperatureRangeSource());
    return found;
  }

  /** Outside the tropics the warm half of the year tells north from south. */
  private Optional<Finding> otherHemisphere(Plan plan, ClimateNormals climate) {
    boolean isTropical =
        plan.site().map(s -> Math.abs(s.latitude().degrees()) < TROPIC_DEG).orElse(true);
    boolean isWarmInJuly =
        climate.months().get(6).mean().compareTo(climate.months().get(0).mean()) > 0;
    if (isTropical || isWarmInJuly != plan.isSouthern()) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.of(
            id(),
            Severity.WARNING,
            "the climate of "
                + climate.place()
                + " is warm in "
                + (isWarmInJuly ? "July" : "January")
                + ", the site lies in the "
                + (plan.isSouthern() ? "south" : "north")
                + ": every month of the water tables is wrong",
            "give a climate of this place, by `climateNormals`, and check the sign of the latitude",
            SEASONS));
  }

  private void unverified(List<Finding> found, String what, Source source) {
    if (source.standing() == Standing.MEMORY) {
      found.add(
          note(
              "recalled and not verified for this climate: " + what + ", from " + source.cite(),
              "compare them with the nearest station before relying on the water table"));
    }
  }

  private Finding note(String text, String advice) {
    return Finding.of(id(), Severity.NOTE, text, advice, SAID);
  }
}
