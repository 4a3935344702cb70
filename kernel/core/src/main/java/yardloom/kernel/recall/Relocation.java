package yardloom.kernel.recall;

import java.lang.reflect.Array;
import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.problem.SourceRef;

/**
 * An earlier result with its statements where they stand now. What holds no place stays as it is;
 * what is shared stays shared.
 */
final class Relocation {
  private final Moves moves;
  private final Map<Object, Object> done = new IdentityHashMap<>();

  /** Something holds a place and cannot be made anew from its parts. */
  private static final class Stuck extends RuntimeException {
    private static final long serialVersionUID = 1;

    Stuck() {
      super(null, null, false, false);
    }
  }

  private Relocation(Moves moves) {
    this.moves = moves;
  }

  /** The same result by {@code moves}; empty if it cannot be made so. */
  static <T> Optional<T> of(T result, Moves moves) {
    try {
      @SuppressWarnings("unchecked")
      T relocated = (T) new Relocation(moves).moved(result);
      return Optional.of(relocated);
    } catch (Stuck e) {
      return Optional.empty();
    }
  }

  private Object moved(Object value) {
    if (value == null) {
      return null;
    }
    if (value instanceof SourceRef was) {
      SourceRef is = moves.of(was);
      if (is == null) {
        throw new Stuck();
      }
      return is.equals(was) ? was : is;
    }
    Object before = done.get(value);
    if (before == null) {
      before = parts(value);
      done.put(value, before);
    }
    return before;
  }

  private Object parts(Object value) {
    if (value instanceof Optional<?> some) {
      Object was = some.orElse(null);
      Object is = moved(was);
      return was == is ? value : Optional.of(is);
    }
    if (value instanceof Collection<?> all) {
      return collection(all);
    }
    if (value instanceof Map<?, ?> map) {
      return map(map);
    }
    if (value.getClass().isArray()) {
      return array(value);
    }
    if (value instanceof Attributes attributes) {
      return attributes.mapped(this::moved);
    }
    return fields(value);
  }

  private Object fields(Object value) {
    Anatomy anatomy = Anatomy.of(value.getClass());
    Object[] parts = new Object[anatomy.fields().size()];
    boolean changed = false;
    int i = 0;
    for (Field field : anatomy.fields()) {
      Object was = Anatomy.in(field, value);
      parts[i] = field.getType().isPrimitive() ? was : moved(was);
      changed |= parts[i] != was;
      i++;
    }
    if (!changed) {
      return value;
    }
    if (!value.getClass().isRecord()) {
      throw new Stuck();
    }
    try {
      return Anatomy.record(value.getClass(), parts);
    } catch (ReflectiveOperationException e) {
      throw new Stuck();
    }
  }

  private Object collection(Collection<?> all) {
    List<Object> parts = new ArrayList<>();
    boolean changed = false;
    for (Object was : all) {
      Object is = moved(was);
      changed |= is != was;
      parts.add(is);
    }
    if (!changed) {
      return all;
    }
    if (all instanceof List) {
      return Collections.unmodifiableList(parts);
    }
    if (all instanceof SortedSet<?> sorted) {
      SortedSet<Object> again = sortedLike(sorted);
      again.addAll(parts);
      return Collections.unmodifiableSortedSet(again);
    }
    if (all instanceof Set) {
      return Collections.unmodifiableSet(new LinkedHashSet<>(parts));
    }
    throw new Stuck();
  }

  @SuppressWarnings("unchecked")
  private static SortedSet<Object> sortedLike(SortedSet<?> sorted) {
    return new TreeSet<>(((SortedSet<Object>) sorted).comparator());
  }

  private Object map(Map<?, ?> map) {
    Map<Object, Object> parts = new LinkedHashMap<>();
    boolean changed = false;
    for (Map.Entry<?, ?> entry : map.entrySet()) {
      Object key = moved(entry.getKey());
      Object value = moved(entry.getValue());
      changed |= key != entry.getKey() || value != entry.getValue();
      parts.put(key, value);
    }
    if (!changed) {
      return map;
    }
    if (map instanceof SortedMap<?, ?> sorted) {
      SortedMap<Object, Object> again = sortedLike(sorted);
      again.putAll(parts);
      return Collections.unmodifiableSortedMap(again);
    }
    return Collections.unmodifiableMap(parts);
  }

  @SuppressWarnings("unchecked")
  private static SortedMap<Object, Object> sortedLike(SortedMap<?, ?> sorted) {
    return new TreeMap<>(((SortedMap<Object, Object>) sorted).comparator());
  }

  private Object array(Object array) {
    if (array.getClass().getComponentType().isPrimitive()) {
      return array;
    }
    for (int i = 0; i < Array.getLength(array); i++) {
      Object was = Array.get(array, i);
      if (moved(was) != was) {
        throw new Stuck();
      }
    }
    return array;
  }
}
