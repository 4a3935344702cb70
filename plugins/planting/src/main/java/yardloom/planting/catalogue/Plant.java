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
 * @param inRow distance of neighbours in a row
 * @param rows distance of rows in open ground
 * @param spread diameter of a grown plant
 * @param height height of a grown plant
 * @param start how it is usually put into the ground; common practice
 * @param family the accepted botanical family; crops of one share pests and are rotated together
 * @param crop the row of FAO-56 it draws water like
 * @param cropStandsIn whether that row is of a related crop, for want of its own
 * @param juglone who says that it suffers near trees that make juglone; empty if nobody does
 * @param makesJuglone whether its roots give off juglone, which poisons some plants near it
 * @param harmful whether the caution is about harm to people or animals
 * @param window the group of kinds that are planted in the same days
 * @param mulchGroup how it grows, for the chips it bears: woody, spreading, low or annual
 * @param mulch how deep chips may lie on it, by how it grows
 * @param own what else is said of a plant of the user's own; empty for those of the catalogue
 */
public record Plant(
    String name,
    String botanical,
    String family,
    Source familySource,
    Form form,
    Season season,
    Start start,
    SizeRange inRow,
    SizeRange rows,
    SizeRange spread,
    SizeRange height,
    LightNeed.Amount light,
    Source lightSource,
    Crop crop,
    boolean cropStandsIn,
    Source cropSource,
    Optional<Source> juglone,
    boolean makesJuglone,
    boolean harmful,
    String caution,
    Source cautionSource,
    String window,
    String mulchGroup,
    Borne mulch,
    Optional<Own> own) {

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
   * @param most depth as laid; what is deeper smothers its crown or stems
   */
  public record Borne(Length most, Source source) {}

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
    return form.isWoody() ? WorkPhase.TREES : WorkPhase.PLANT;
  }

  /** What of this row was recalled and not verified. */
  public List<String> unverified() {
    List<String> found = new ArrayList<>();
    note(found, "in-row spacing", inRow.source());
    note(found, "row spacing", rows.source());
    note(found, "spread", spread.source());
    note(found, "height", height.source());
    note(found, "light", lightSource);
    note(found, "crop coefficient", cropSource);
    note(found, "caution", cautionSource);
    return List.copyOf(found);
  }

  private static void note(List<String> found, String what, Source source) {
    if (source.standing() == Standing.MEMORY) {
      found.add(what);
    }
  }
}
