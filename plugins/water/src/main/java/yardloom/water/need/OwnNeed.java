package yardloom.water.need;

import java.util.List;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;

/**
 * What a bed takes by month, as the plan says it.
 *
 * @param months net depths of whole months, January to December
 */
record OwnNeed(List<Length> months, Source source) {
  static final AttributeKey<OwnNeed> KEY = new AttributeKey<>("water.own-need", OwnNeed.class);

  OwnNeed {
    months = List.copyOf(months);
  }
}
