/**
 * What is other in a new plan than in an old one: elements, quantities, orders, labour, cost and
 * findings; as text, as a sheet that shows both, and as a change order. Plans are compared as their
 * {@code results.json} has them, so that two folders of output compare like two scripts. Start with
 * {@link yardloom.program.compare.Comparison}.
 */
package yardloom.program.compare;
