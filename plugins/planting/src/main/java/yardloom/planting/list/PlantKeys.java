package yardloom.planting.list;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.placing.PlantPlaces;

/**
 * Short keys of the kinds of a plan, as nurseries and planting plans use them: the first letters of
 * genus and species, numbered where several kinds share them.
 */
public final class PlantKeys {
  private PlantKeys() {}

  /** Key by catalogue name. */
  public static SortedMap<String, String> of(PlantPlaces places) {
    Map<String, List<String>> byLetters = new HashMap<>();
    for (Plant plant : places.kinds().values()) {
      byLetters
          .computeIfAbsent(letters(plant.botanical()), k -> new ArrayList<>())
          .add(plant.name());
    }
    SortedMap<String, String> keys = new TreeMap<>();
    byLetters.forEach(
        (letters, names) -> {
          for (int i = 0; i < names.size(); i++) {
            keys.put(names.get(i), names.size() == 1 ? letters : letters + (i + 1));
          }
        });
    return keys;
  }

  private static String letters(String botanical) {
    StringBuilder letters = new StringBuilder();
    for (String word : botanical.split("[^\\p{L}]+")) {
      if (!word.isEmpty() && letters.length() < 2) {
        letters.append(word.substring(0, 1).toUpperCase(Locale.ROOT));
      }
    }
    return letters.toString();
  }
}
