package yardloom.kernel.study;

import yardloom.kernel.draw.Panel;

/** Which layers the drawing of a panel shows. */
public final class ShownLayers {
  private ShownLayers() {}

  /**
   * Whether a panel shows a layer; panels without a drawing of the site show none.
   *
   * @param layer its id
   * @param shown whether the site plan shows it unless told otherwise
   * @param yard whether it is what anybody finds their way by
   */
  public static boolean isOn(Panel panel, String layer, boolean shown, boolean yard) {
    if (panel instanceof Panel.SitePlan site) {
      return site.layers().contains(layer)
          || switch (site.base()) {
            case SHOWN -> shown;
            case YARD -> yard;
            case NAMED -> false;
          };
    }
    if (panel instanceof Panel.Enlarged part) {
      return yard || part.layers().contains(layer);
    }
    return panel instanceof Panel.Before view && view.layers().contains(layer);
  }
}
