package yardloom.facts.work;

/**
 * What people do in a yard; each has a rate, under its title, in the table of labour, but for
 * walks, which have a pace, and the plan's own.
 */
public enum WorkTask {
  MEET_MARKER("call for the marks, photograph them"),
  STAKE_OUT("stake out"),
  MOW("mow low"),
  DIG_EARTH("dig swales and cuts by hand"),
  FILL_EARTH("fill and tamp by hand"),
  BUILD_WALL("lay walls of block"),
  PLACE_ROCK("place rock and gravel by barrow"),
  SET_STEPS("set steps"),
  POUR_SLAB("form, pour and finish slabs"),
  HANG_FENCE("hang rails, boards and mesh"),
  HANG_GATE("hang gates"),
  SET_UP("put up what is built"),
  CUT_EDGE("cut edge"),
  SET_EDGING("set edging"),
  DIG_TRENCH("dig and fill trenches for pipe"),
  LAY_PIPE("lay pipe in trenches"),
  SET_FITTING("set fittings of pipe"),
  BUILD_FRAMES("saw and set frames"),
  SET_POSTS("set posts"),
  MIX_CONCRETE("mix and pour concrete round posts"),
  STRETCH_WIRE("stretch wire"),
  GRADE_BASE("grade and compact base"),
  LAY_PAVERS("lay pavers"),
  PLANT_TREE("plant trees"),
  PLANT_SHRUB("plant shrubs and vines"),
  SET_TANK("level the base and set tanks"),
  ASSEMBLE_HEAD("assemble the head"),
  SPREAD_AMENDMENT("spread lime or sulfur"),
  SOAK("soak the ground"),
  LAY_CARDBOARD("lay cardboard"),
  FILL_FRAMES("fill frames and raised beds"),
  WALK("walk with barrows"),
  SPREAD("load and spread mulch"),
  PLANT_POT("plant from pots"),
  PLANT_CROWN("plant crowns and runners"),
  PLANT_PLUG("plant plugs and seedlings"),
  SET_BULBS("set bulbs and tubers"),
  SOW("sow"),
  WATER_IN("water in"),
  LAY_DRIPLINE("lay drip line"),
  CLOSE_ENDS("flush and close ends"),
  CLEAN_UP("rake level and clean up"),
  /** A task of the plan's own, which brings its name and its hours. */
  OWN("own tasks"),
  VISIT("visit through the first season");

  private final String title;

  WorkTask(String title) {
    this.title = title;
  }

  /** How tables call it; the name of its rate. */
  public String title() {
    return title;
  }
}
