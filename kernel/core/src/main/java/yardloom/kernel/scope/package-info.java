/**
 * The blocks of the plan language that plugins extend, and the steps by which a word makes an
 * element. Start with {@link yardloom.kernel.scope.PlanScope}.
 */
package yardloom.kernel.scope;
