/**
 * On which day each load is tipped, and whether its ground is free then. Start with {@link
 * yardloom.work.delivery.DeliveryDays}.
 */
package yardloom.work.delivery;
