/**
 * Which words a running script called, with what: the tree that its JSON form writes. Start at
 * {@link yardloom.language.record.Recorder}.
 */
package yardloom.language.record;
