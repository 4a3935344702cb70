package yardloom.kernel.recall;

import java.lang.reflect.Array;
import java.lang.reflect.Field;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.Iterator;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.problem.SourceRef;

/**
 * Whether two answers are the same, but for the places in scripts that they come from: these may
 * lie on other lines. The places that stand for each other are noted.
 *
 * <p>Values are compared part by part, for what is no record and has no {@code equals} field by
 * field. Code made at run time (a lambda) is like itself only. Sets and maps that have or may have
 * an order are compared in it; where that differs they are held for different, which costs work and
 * no truth.
 */
final class Likeness {
  private final boolean withAttributes;
  private final boolean everyPlace;
  private final Moves moves = new Moves();
  private final Map<Object, Object> compared = new IdentityHashMap<>();

  private Likeness(boolean withAttributes, boolean everyPlace) {
    this.withAttributes = withAttributes;
    this.everyPlace = everyPlace;
  }

  /**
   * The places that stand for each other; empty if the two differ.
   *
   * @param withAttributes whether what plugins attached to elements counts
   * @param everyPlace whether places that stayed are noted too
   */
  static Optional<Moves> of(Object before, Object now, boolean withAttributes, boolean everyPlace) {
    Likeness likeness = new Likeness(withAttributes, everyPlace);
    return likeness.alike(before, now) ? Optional.of(likeness.moves) : Optional.empty();
  }

  /** Whether the two are the same, places included. */
  static boolean exact(Object before, Object now) {
    return of(before, now, true, false).filter(Moves::areNone).isPresent();
  }

  private boolean alike(Object before, Object now) {
    if (before == null || now == null) {
      return before == now;
    }
    if (before == now && !everyPlace) {
      return true;
    }
    if (before instanceof SourceRef was) {
      return now instanceof SourceRef is && moves.pair(was, is);
    }
    if (before instanceof Attributes && !withAttributes) {
      return now instanceof Attributes;
    }
    if (before instanceof Optional<?> was) {
      return now instanceof Optional<?> is && alike(was.orElse(null), is.orElse(null));
    }
    if (before instanceof Set<?> was && areOrderless(before, now) && was.equals(now)) {
      return eachAlike(was, was);
    }
    if (before instanceof Collection<?> was) {
      return now instanceof Collection<?> is && eachAlike(was, is);
    }
    if (before instanceof Map<?, ?> was) {
      return now instanceof Map<?, ?> is && mapsAlike(was, is);
    }
    return before.getClass() == now.getClass() && ofOneClass(before, now);
  }

  private boolean ofOneClass(Object before, Object now) {
    if (before.getClass().isArray()) {
      return arraysAlike(before, now);
    }
    Anatomy anatomy = Anatomy.of(before.getClass());
    if (anatomy.whole()) {
      return before.equals(now);
    }
    if (anatomy.hidden()) {
      return before == now;
    }
    // Derivations share what they rest on; each is compared once.
    if (compared.get(before) == now) {
      return true;
    }
    compared.put(before, now);
    for (Field field : anatomy.fields()) {
      if (!alike(Anatomy.in(field, before), Anatomy.in(field, now))) {
        return false;
      }
    }
    return true;
  }

  /** Sets and maps of {@code copyOf} keep no order that anybody may rely on; wrapped ones may. */
  private static boolean areOrderless(Object before, Object now) {
    return before.getClass().getName().startsWith("java.util.ImmutableCollections$")
        && now != null
        && now.getClass() == before.getClass();
  }

  /** By key where there is no order. */
  private boolean mapsAlike(Map<?, ?> before, Map<?, ?> now) {
    if (!areOrderless(before, now) || !before.keySet().equals(now.keySet())) {
      return eachAlike(before.keySet(), now.keySet()) && eachAlike(before.values(), now.values());
    }
    return eachAlike(before.keySet(), before.keySet())
        && before.entrySet().stream().allMatch(e -> alike(e.getValue(), now.get(e.getKey())));
  }

  private boolean arraysAlike(Object before, Object now) {
    if (before.getClass().getComponentType().isPrimitive()) {
      return Objects.deepEquals(before, now);
    }
    int length = Array.getLength(before);
    if (length != Array.getLength(now)) {
      return false;
    }
    for (int i = 0; i < length; i++) {
      if (!alike(Array.get(before, i), Array.get(now, i))) {
        return false;
      }
    }
    return true;
  }

  private boolean eachAlike(Collection<?> before, Collection<?> now) {
    if (before.size() != now.size()) {
      return false;
    }
    Iterator<?> others = now.iterator();
    for (Object one : before) {
      if (!alike(one, others.next())) {
        return false;
      }
    }
    return true;
  }
}
