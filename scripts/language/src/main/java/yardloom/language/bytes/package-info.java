/**
 * The last gate: what the finished bytes of a script may name. Start with {@link
 * yardloom.language.bytes.ClassGate}; {@code Allowed} gathers the list, {@code ListedLoader} shows
 * a running script the listed classes and nothing else.
 */
package yardloom.language.bytes;
