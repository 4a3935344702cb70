package yardloom.planting.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardloom.facts.LightNeed;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.source.Source;
import yardloom.kernel.source.Source.Standing;
import yardloom.kernel.unit.Length;

/**
 * A row of the plant catalogue; every figure keeps its own source.
 *
 * @param mulch how deep chips may lie on it, by how it grows
 * @param own what else is said of a plant of the user's own; empty for those of the catalogue
 */
public record Plant(
    String name,
    String botanical,
    Family family,
    Growth growth,
    Size size,
    Light light,
    Draw draw,
    Juglone juglone,
    Caution caution,
    Borne mulch,
    Optional<Own> own) {

  /** The accepted botanical family; crops of one share pests and are rotated together. */
  public record Family(String name, Source source) {}

  /**
   * How it grows and comes into the ground.
   *
   * @param start how it is usually put into the ground; common practice
   * @param window the group of kinds that are planted in the same days
   */
  public record Growth(Form form, Season season, Start start, String window) {}

  /**
   * Spacing, and measures of a grown plant.
   *
   * @param inRow distance of neighbours in a row
   * @param rows distance of rows in open ground
   * @param spread diameter of a grown plant
   */
  public record Size(SizeRange inRow, SizeRange rows, SizeRange spread, SizeRange height) {
    /** What of it was recalled and not verified. */
    private void unverified(List<String> found) {
      note(found, "in-row spacing", inRow.source());
      note(found, "row spacing", rows.source());
      note(found, "spread", spread.source());
      note(found, "height", height.source());
    }
  }

  /** The light it wants. */
  public record Light(LightNeed.Amount amount, Source source) {}

  /**
   * The water it draws.
   *
   * @param crop the row of FAO-56 it draws water like
   * @param standsIn whether that row is of a related crop, for want of its own
   */
  public record Draw(Crop crop, boolean standsIn, Source source) {}

  /**
   * Its part in the poison of walnut roots.
   *
   * @param suffers who says that it suffers near trees that make juglone; empty if nobody does
   * @param makes whether its roots give off juglone, which poisons some plants near it
   */
  public record Juglone(Optional<Source> suffers, boolean makes) {}

  /**
   * What to look out for.
   *
   * @param harmful whether it is about harm to people or animals
   */
  public record Caution(boolean harmful, String text, Source source) {}

  /** How it grows; decides symbol and row spacing. */
  public enum Form {
    HERB,
    ANNUAL,
    SHRUB,
    VINE,
    TREE;

    public boolean isWoody() {
      return this == SHRUB || this == VINE || this == TREE;
    }
  }

  /** When it is in leaf and draws water. */
  public enum Season {
    DECIDUOUS,
    EVERGREEN,
    /** Sown or planted each year, bears light frost. */
    ANNUAL,
    /** Sown or planted each year after frost. */
    TENDER_ANNUAL;

    public boolean isAnnual() {
      return this == ANNUAL || this == TENDER_ANNUAL;
    }
  }

  /** How it is put into the ground. */
  public enum Start {
    /** One by one, from pots, crowns or tubers. */
    PLANT,
    /** In drills, thinned to their spacing. */
    SEED,
    /** Small bulbs in drills. */
    SETS;

    /** Whether it goes into drills, which are bought for and worked by length. */
    public boolean isInDrills() {
      return this != PLANT;
    }
  }

  /**
   * How deep chips may lie where it grows.
   *
   * @param group how it grows, for the chips it bears: woody, spreading, low or annual
   * @param most depth as laid; what is deeper smothers its crown or stems
   */
  public record Borne(String group, Length most, Source source) {}

  /**
   * A plant that the catalogue does not have, or has otherwise.
   *
   * @param like the plant of the catalogue whose figures stand in where nobody says
   * @param traits what is known of it, each by its class; a list where there may be several
   */
  public record Own(String like, Map<Class<?>, Object> traits) {
    public Own {
      traits = Map.copyOf(traits);
    }
  }

  /** One trait: as said of a plant of the user's own, else by its name in a shipped table. */
  public <T> Optional<T> trait(Class<T> type, Map<String, T> shipped) {
    return own.isPresent()
        ? Optional.ofNullable(type.cast(own.get().traits().get(type)))
        : Optional.ofNullable(shipped.get(name));
  }

  /** Traits of which there may be several. */
  @SuppressWarnings("unchecked")
  public <T> List<T> traits(Class<?> type, Map<String, List<T>> shipped) {
    // The map holds lists of what its keys name.
    return own.isPresent()
        ? (List<T>) own.get().traits().getOrDefault(type, List.of())
        : shipped.getOrDefault(name, List.of());
  }

  /** The plant of the catalogue that it is or is like. */
  public String model() {
    return own.map(Own::like).orElse(name);
  }

  /** The first word of its botanical name; relatives share it. */
  public String genus() {
    return botanical.split(" ")[0];
  }

  /** When it is bought and planted: what is woody before the cardboard, all else through it. */
  public WorkPhase phase() {
    return growth.form().isWoody() ? WorkPhase.TREES : WorkPhase.PLANT;
  }

  /** What of this row was recalled and not verified. */
  public List<String> unverified() {
    List<String> found = new ArrayList<>();
    size.unverified(found);
    note(found, "light", light.source());
    note(found, "crop coefficient", draw.source());
    note(found, "caution", caution.source());
    return List.copyOf(found);
  }

  private static void note(List<String> found, String what, Source source) {
    if (source.standing() == Standing.MEMORY) {
      found.add(what);
    }
  }
}
