/**
 * Where do the annuals of each family stand in the years to come? Start with {@link
 * yardloom.planting.rotation.YearsApart}.
 */
package yardloom.planting.rotation;
