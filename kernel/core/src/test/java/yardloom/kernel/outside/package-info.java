/** For tests: figures of others, held against ours. Start with {@code OutsideRows}. */
package yardloom.kernel.outside;
