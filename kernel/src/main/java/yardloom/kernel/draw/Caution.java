package yardloom.kernel.draw;

import yardloom.kernel.source.Source;

/** A warning printed on the sheet where work can hurt someone. */
public record Caution(String text, Source source) {}
