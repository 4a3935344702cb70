package yardloom.materials.mulch;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;

/** A bulk material that a plan or its region names; its rates stand with the other local rates. */
public record OwnBulk(String name) {
  public static final AttributeKey<OwnBulk> KEY =
      new AttributeKey<>("materials.own-bulk", OwnBulk.class);

  /** The material of that name, if a plan knows it so far. */
  public static Optional<OwnBulk> find(Attributes.Builder said, String name) {
    return said.all(KEY).stream()
        .map(Attributes.Entry::value)
        .filter(b -> b.name.equalsIgnoreCase(name.strip()))
        .findFirst();
  }

  /**
   * The name of a material as it was first written.
   *
   * @throws PlanException (UNKNOWN_WORD) naming the nearest
   */
  public static String named(Attributes.Builder said, String name, SourceRef place) {
    List<String> known = said.all(KEY).stream().map(e -> e.value().name).distinct().toList();
    return find(said, name)
        .map(OwnBulk::name)
        .orElseThrow(
            () ->
                new PlanException(
                    ProblemCode.UNKNOWN_WORD,
                    place,
                    "no `bulkMaterial` is called '"
                        + name
                        + "'."
                        + Nearest.hint(name, known)
                        + " Give it above, with what it weighs; compost, chips and cardboard have"
                        + " words of their own."));
  }
}
