package yardloom.planting.traits;

import java.util.Map;
import yardloom.kernel.source.Source;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;

/**
 * The fewest hours of direct sun a day with which a kind still grows and bears something. What it
 * asks for, the catalogue says by class; how many hours that is, the plan's scheme of light.
 *
 * @param hours mean a day over the months in which it grows
 */
public record LeastLight(double hours, Source source) {
  private static final Map<String, LeastLight> SHIPPED =
      PlantCatalogue.byPlant(
          LeastLight.class,
          "light.csv",
          row ->
              new LeastLight(row.number("least_h"), PlantCatalogue.sources().cited(row, "source")));

  /** By catalogue name; every plant has one. */
  public static LeastLight of(Plant plant) {
    return plant.trait(LeastLight.class, SHIPPED).orElseThrow();
  }
}
