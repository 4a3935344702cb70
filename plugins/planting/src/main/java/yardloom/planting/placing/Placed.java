package yardloom.planting.placing;

/** A line of a bed that says where its plants stand. */
public record Placed(PlantChoice choice, Placement where) {}
