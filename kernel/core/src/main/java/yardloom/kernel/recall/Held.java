package yardloom.kernel.recall;

import java.lang.reflect.Array;
import java.lang.reflect.Field;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.Reads.Question;
import yardloom.kernel.plan.Reads.Topic;

/**
 * What a result holds beside its own values: whole elements or the plan, which hand on what their
 * giver never read, or facts or code, through which anything may be read later.
 */
final class Held {
  private final Set<Question> handedOn = new LinkedHashSet<>();
  private final Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());
  private boolean open;

  private Held() {}

  /** What {@code result} hands on, as questions; empty if it may read more than can be told. */
  static Optional<Set<Question>> in(Object result) {
    Held held = new Held();
    held.look(result);
    return held.open ? Optional.empty() : Optional.of(held.handedOn);
  }

  private void look(Object value) {
    if (value == null || open || value instanceof Enum || value instanceof String) {
      return;
    }
    if (value instanceof Facts || value instanceof Attributes) {
      open = true;
    } else if (value instanceof Plan) {
      handedOn.add(new Question(Topic.WHOLE_PLAN, ""));
    } else if (value instanceof Optional<?> some) {
      some.ifPresent(this::look);
    } else if (value instanceof Collection<?> all) {
      all.forEach(this::look);
    } else if (value instanceof Map<?, ?> map) {
      map.keySet().forEach(this::look);
      map.values().forEach(this::look);
    } else if (value.getClass().isArray()) {
      if (!value.getClass().getComponentType().isPrimitive()) {
        for (int i = 0; i < Array.getLength(value); i++) {
          look(Array.get(value, i));
        }
      }
    } else {
      lookInto(value);
    }
  }

  private void lookInto(Object value) {
    Anatomy anatomy = Anatomy.of(value.getClass());
    if (anatomy.hidden()) {
      open = true;
    }
    if (anatomy.whole() || !seen.add(value)) {
      return;
    }
    if (value instanceof Element element) {
      handedOn.add(new Question(Topic.WHOLE_ELEMENT, element.id()));
      return;
    }
    for (Field field : anatomy.fields()) {
      if (!field.getType().isPrimitive()) {
        look(Anatomy.in(field, value));
      }
    }
  }
}
