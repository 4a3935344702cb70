package yardloom.materials.model;

import yardloom.kernel.source.Source;

/** A weed that outlasts a plain sheet mulch, and what to do first. */
public record Weed(String name, String advice, Source source) {}
