/**
 * What a plan may say, found by name, topic and other names for the same. Start with {@link
 * yardloom.program.words.WordIndex}.
 */
package yardloom.program.words;
