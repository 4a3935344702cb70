package yardloom.facts.mulch;

import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Volume;

/**
 * Loose bulk beside sheet mulch that is wheeled to one thing: rock, gravel, sand, soil.
 *
 * @param to how tables call what it is for
 * @param ground where it is wheeled to
 * @param item as the bill has it
 * @param phase when it is wheeled
 * @param volume loose, as it comes off the truck
 */
public record Carry(
    String to, Shape ground, String item, WorkPhase phase, Derived<Volume> volume) {}
