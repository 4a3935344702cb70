package yardloom.water.roof;

import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.source.Source;

/**
 * The share of the rain that a roof of the plan sheds, as the plan says it.
 *
 * @param roof by name
 */
record OwnShare(String roof, double share, Source source) {
  static final AttributeKey<OwnShare> KEY = new AttributeKey<>("water.roof-share", OwnShare.class);
}
