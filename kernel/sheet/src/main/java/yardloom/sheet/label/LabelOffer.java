package yardloom.sheet.label;

/**
 * A place for a label and what it costs the reader.
 *
 * @param spot null if there is none
 */
record LabelOffer(LabelSpot spot, double cost) {
  static final LabelOffer NONE = new LabelOffer(null, Double.MAX_VALUE);

  LabelOffer orCheaper(LabelSpot other, double otherCost) {
    return otherCost < cost ? new LabelOffer(other, otherCost) : this;
  }
}
