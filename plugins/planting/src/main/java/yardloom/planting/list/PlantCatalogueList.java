package yardloom.planting.list;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import yardloom.kernel.spi.Catalogue;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Temperature;
import yardloom.kernel.vocab.Choices;
import yardloom.planting.care.KindCare;
import yardloom.planting.catalogue.Crop;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.catalogue.SizeRange;
import yardloom.planting.harvest.Bearing;
import yardloom.planting.harvest.HarvestSeason;
import yardloom.planting.harvest.PlantYields;
import yardloom.planting.harvest.Yield;
import yardloom.planting.traits.Bloom;
import yardloom.planting.traits.ChillNeeds;
import yardloom.planting.traits.ColdLimits;
import yardloom.planting.traits.Growth;
import yardloom.planting.traits.Hazard;
import yardloom.planting.traits.HeatLimits;
import yardloom.planting.traits.LeastLight;
import yardloom.planting.traits.Pollination;
import yardloom.planting.traits.SoilNeed;
import yardloom.planting.traits.WaterClass;

/** The plants that plans may name, for a reader. */
public final class PlantCatalogueList {
  private PlantCatalogueList() {}

  /** By name, with what they ask for and are good for. */
  public static Catalogue plants() {
    return new Catalogue(
        "plants",
        "Plants that plans may name",
        PlantCatalogue.shipped().all().stream().map(PlantCatalogueList::row).toList());
  }

  private static Catalogue.Row row(Plant plant) {
    String name = plant.name();
    Growth growth = Growth.of(plant);
    Map<String, String> traits = new TreeMap<>();
    traits.put("botanical", plant.botanical());
    traits.put("family", plant.family().name());
    traits.put("layer", Choices.text(growth.layer()));
    traits.put("life", Choices.text(growth.life()));
    traits.put("light", Choices.text(plant.light().amount()));
    traits.put("native", growth.nativeTo().orElse(""));
    traits.put("roles", String.join(", ", Growth.roles(plant)));
    traits.put("water", WaterClass.of(plant).map(w -> Choices.text(w.of())).orElse(""));
    traits.put("ph", SoilNeed.of(plant).map(PlantCatalogueList::ph).orElse(""));
    traits.put("drainage", SoilNeed.of(plant).map(s -> Choices.text(s.drainage())).orElse(""));
    traits.put("zone", ColdLimits.of(plant).map(l -> l.coldest() + " and warmer").orElse(""));
    traits.put("hours", hours(LeastLight.of(plant).hours()));
    traits.put("height", size(plant.size().height()));
    traits.put("spread", size(plant.size().spread()));
    traits.put("spacing", size(plant.size().inRow()));
    traits.put("harms", harms(plant));
    traits.put("bears", Bearing.of(plant).map(b -> "from year " + b.first()).orElse(""));
    traits.put("care", String.join(", ", KindCare.of(plant)));
    traits.put("pollination", pollination(Pollination.of(plant)));
    traits.put("blooms", Bloom.of(plant).map(b -> days(b.from(), b.until())).orElse(""));
    traits.put("picked", HarvestSeason.of(plant).map(s -> days(s.from(), s.until())).orElse(""));
    traits.put("yield", PlantYields.of(plant).map(PlantCatalogueList::yield).orElse(""));
    traits.put("chill", ChillNeeds.of(plant).map(PlantCatalogueList::chill).orElse(""));
    traits.put("heat", HeatLimits.of(plant).map(h -> "suffers from " + both(h.day())).orElse(""));
    traits.put("planted", "as " + plant.growth().window());
    traits.put("crop", crop(plant.draw().crop()));
    traits.put("mulch", "bears " + inches(plant.mulch().most()));
    return new Catalogue.Row(name, traits);
  }

  private static String pollination(Pollination pollination) {
    String need = Choices.text(pollination.need());
    return pollination.group().isEmpty() ? need : need + ", group " + pollination.group();
  }

  private static String days(int from, int until) {
    return "days " + from + " to " + until + " from the last frost";
  }

  private static String yield(Yield yield) {
    return String.format(
        Locale.ROOT,
        "%s lb (%s kg) a %s",
        span(yield.low().pounds(), yield.high().pounds()),
        span(yield.low().kilograms(), yield.high().kilograms()),
        Choices.text(yield.per()));
  }

  private static String chill(ChillNeeds.Need need) {
    String most =
        need.high().isPresent()
            ? String.format(Locale.ROOT, " to %.0f", need.high().getAsDouble())
            : "";
    return String.format(Locale.ROOT, "%.0f%s h", need.low(), most);
  }

  private static String both(Temperature day) {
    return String.format(Locale.ROOT, "%.0f °F (%.0f °C)", day.fahrenheit(), day.celsius());
  }

  private static String crop(Crop crop) {
    String kc =
        String.format(
            Locale.ROOT,
            "%s, Kc %.2f, %.2f, %.2f",
            crop.name(),
            crop.kc().initial(),
            crop.kc().middle(),
            crop.kc().end());
    return crop.roots().map(r -> kc + ", roots " + size(r.low(), r.high())).orElse(kc);
  }

  private static String inches(Length depth) {
    return String.format(Locale.ROOT, "%.0f in (%.0f mm)", depth.inches(), depth.millimetres());
  }

  private static String ph(SoilNeed need) {
    return String.format(Locale.ROOT, "%.1f to %.1f", need.lowPh(), need.highPh());
  }

  private static String hours(double least) {
    return String.format(Locale.ROOT, "%.0f at least", least);
  }

  private static String size(SizeRange range) {
    return size(range.low(), range.high());
  }

  private static String size(Length low, Length high) {
    String feet = span(low.feet(), high.feet());
    return feet + " ft (" + span(low.metres(), high.metres()) + " m)";
  }

  private static String span(double low, double high) {
    return low == high
        ? String.format(Locale.ROOT, "%.1f", low)
        : String.format(Locale.ROOT, "%.1f to %.1f", low, high);
  }

  private static String harms(Plant plant) {
    return Hazard.of(plant).stream()
        .map(h -> Choices.text(h.to()) + ": " + h.part())
        .collect(Collectors.joining(", "));
  }
}
