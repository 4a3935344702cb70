/**
 * What does the tap give, what stands between it and the lines, and what pressure is left behind
 * it? Start with {@link yardloom.water.head.Supply} and {@link yardloom.water.head.HeadAssembly}.
 */
package yardloom.water.head;
