package yardloom.planting.placing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.plan.ElementId;
import yardloom.planting.catalogue.Plant;

/**
 * What the plan plants where. Laid out once for each plan; all else of the plugin reads it.
 *
 * @param plantings by bed and in the order of their lines
 * @param specimens trees whose species the plan names
 */
public record PlantPlaces(List<Planting> plantings, List<Planting.Specimen> specimens) {
  /** The plugin's own fact. */
  public static final FactKey<PlantPlaces> KEY =
      FactKey.one("planting.layout", PlantPlaces.class).called("places of plants");

  public PlantPlaces {
    plantings = List.copyOf(plantings);
    specimens = List.copyOf(specimens);
  }

  /** Those that stand on their ground first in the year: as sheets draw them. */
  public List<Planting> drawn() {
    return plantings.stream().filter(p -> p.follows().isEmpty()).toList();
  }

  /**
   * The plantings of which any plant stands, ground by ground: those that follow each other in the
   * year together, in that order.
   */
  public List<List<Planting>> byGround() {
    Map<Planting, List<Planting>> grounds = new LinkedHashMap<>();
    plantings.stream()
        .filter(p -> !p.at().isEmpty())
        .forEach(p -> grounds.computeIfAbsent(p.first(), k -> new ArrayList<>()).add(p));
    return List.copyOf(grounds.values());
  }

  /** The kinds that are to be planted, by name; not of what stands already. */
  public SortedMap<String, Plant> toPlant() {
    SortedMap<String, Plant> kinds = new TreeMap<>();
    plantings.stream()
        .filter(p -> !p.choice().stands())
        .forEach(p -> kinds.put(p.plant().name(), p.plant()));
    specimens.stream()
        .filter(s -> !s.tree().stands())
        .forEach(s -> kinds.put(s.plant().name(), s.plant()));
    return kinds;
  }

  /** The plantings of each bed in which any plant stands, in the order of their lines. */
  public SortedMap<ElementId, List<Planting>> byBed() {
    SortedMap<ElementId, List<Planting>> beds = new TreeMap<>();
    plantings.stream()
        .filter(p -> !p.at().isEmpty())
        .forEach(p -> beds.computeIfAbsent(p.bed().id(), b -> new ArrayList<>()).add(p));
    return beds;
  }

  /** The kinds that the plan names, by name. */
  public SortedMap<String, Plant> kinds() {
    SortedMap<String, Plant> kinds = new TreeMap<>();
    plantings.forEach(p -> kinds.put(p.plant().name(), p.plant()));
    specimens.forEach(s -> kinds.put(s.plant().name(), s.plant()));
    return kinds;
  }
}
