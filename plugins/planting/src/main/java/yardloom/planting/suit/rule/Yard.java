package yardloom.planting.suit.rule;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardloom.facts.ClimateNormals;
import yardloom.facts.FrostDates;
import yardloom.facts.Hardiness;
import yardloom.facts.SoilAcidity;
import yardloom.facts.SoilProfile;
import yardloom.facts.SunHours;
import yardloom.facts.WinterChill;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;

/**
 * What is known of the yard; what is not known is empty, and no rule speaks of it.
 *
 * @param plants all that is planted or stands, for those that ask for neighbours
 * @param valves the valve of each bed with dripline
 */
public record Yard(
    Plan plan,
    List<Candidate> plants,
    Optional<SunHours> sun,
    Weather weather,
    Ground ground,
    Map<ElementId, Integer> valves,
    Optional<Household> household) {
  public Yard {
    plants = List.copyOf(plants);
    valves = Map.copyOf(valves);
  }

  /** Cold, heat and the usual months of the place. */
  public record Weather(
      Optional<Hardiness> hardiness,
      Optional<WinterChill> chill,
      Optional<ClimateNormals> normals,
      Optional<FrostDates> frost) {}

  /** What was measured of the ground. */
  public record Ground(Optional<SoilAcidity> acidity, Optional<SoilProfile> profile) {}
}
