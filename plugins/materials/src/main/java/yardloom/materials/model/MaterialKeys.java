package yardloom.materials.model;

import yardloom.facts.LocalRule;
import yardloom.facts.mulch.TipSpot;
import yardloom.facts.region.LocalRate;
import yardloom.facts.region.Region;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.unit.Length;

/** What this plugin's words hang on plans and elements. */
public final class MaterialKeys {
  /** On the plan. */
  public static final AttributeKey<MulchSettings> MULCH =
      new AttributeKey<>("materials.sheet-mulch", MulchSettings.class);

  /** On a bed or path: the depth of chips as laid. */
  public static final AttributeKey<Length> MULCH_DEPTH =
      new AttributeKey<>("materials.mulch-depth", Length.class);

  /** On a bed: the depth of compost as laid. */
  public static final AttributeKey<Length> COMPOST_DEPTH =
      new AttributeKey<>("materials.compost-depth", Length.class);

  /** On a bed or path: no cardboard here. */
  public static final AttributeKey<Boolean> NO_CARDBOARD =
      new AttributeKey<>("materials.no-cardboard", Boolean.class);

  /** On a tree that stands outside the beds: a mulched ring of this width from the trunk. */
  public static final AttributeKey<Length> TREE_RING =
      new AttributeKey<>("materials.tree-ring", Length.class);

  /** On the plan, any number. */
  public static final AttributeKey<TipSpot> TIP_SPOT =
      new AttributeKey<>("materials.tip-spot", TipSpot.class);

  /** On the plan: who works when. */
  public static final AttributeKey<WorkSettings> WORK =
      new AttributeKey<>("materials.work", WorkSettings.class);

  /** On the plan, any number: the user's own prices. */
  public static final AttributeKey<Price> PRICE =
      new AttributeKey<>("materials.price", Price.class);

  /** On the plan: its soil. */
  public static final AttributeKey<SoilGiven> SOIL =
      new AttributeKey<>("materials.soil", SoilGiven.class);

  /** On the plan: what a soil test found. */
  public static final AttributeKey<SoilTest> SOIL_TEST =
      new AttributeKey<>("materials.soil-test", SoilTest.class);

  /** On the plan, a bed or a path, any number: tough weeds. */
  public static final AttributeKey<Weed> WEED = new AttributeKey<>("materials.weed", Weed.class);

  /** On the plan, any number: rules that hold where it lies. */
  public static final AttributeKey<LocalRule> LOCAL_RULE =
      new AttributeKey<>("materials.local-rule", LocalRule.class);

  /** On the plan: the region that it lies in. */
  public static final AttributeKey<Region> REGION =
      new AttributeKey<>("materials.region", Region.class);

  /** On the plan: which named soil it has. */
  public static final AttributeKey<SoilChoice> SOIL_CHOICE =
      new AttributeKey<>("materials.soil-choice", SoilChoice.class);

  /** On the plan, any number: named soils. */
  public static final AttributeKey<LocalSoil> LOCAL_SOIL =
      new AttributeKey<>("materials.local-soil", LocalSoil.class);

  /** On the plan, any number: rates of labour. */
  public static final AttributeKey<LocalRate> LOCAL_LABOUR =
      new AttributeKey<>("work.local-labour", LocalRate.class);

  /** On the plan, any number: rates of loads and densities. */
  public static final AttributeKey<LocalRate> LOCAL_RATE =
      new AttributeKey<>("materials.local-rate", LocalRate.class);

  /** On the plan, any number: checks that hold where it lies. */
  public static final AttributeKey<LocalCheck> LOCAL_CHECK =
      new AttributeKey<>("materials.local-check", LocalCheck.class);

  /** On a bed: boards about it. */
  public static final AttributeKey<Frame> FRAME =
      new AttributeKey<>("materials.frame", Frame.class);

  /** On a bed: an edging about it. */
  public static final AttributeKey<Edging> EDGING =
      new AttributeKey<>("materials.edging", Edging.class);

  /** On the plan, any number. */
  public static final AttributeKey<Trellis> TRELLIS =
      new AttributeKey<>("materials.trellis", Trellis.class);

  /** On the plan, any number. */
  public static final AttributeKey<PaverField> PAVERS =
      new AttributeKey<>("materials.pavers", PaverField.class);

  /** On the plan, any number: prunings and weeds of a season. */
  public static final AttributeKey<Residue> RESIDUE =
      new AttributeKey<>("materials.residue", Residue.class);

  private MaterialKeys() {}
}
