/**
 * What the plan counts itself because nothing else does: things to buy and work to do, with price,
 * hours and phase. Start with {@link yardloom.work.own.OwnWords}.
 */
package yardloom.work.own;
