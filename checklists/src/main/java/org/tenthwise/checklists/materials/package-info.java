/**
 * How much the materials of the shop grow with heat: a table that comes along, each figure with its source.
 *
 * <p>A material is named by designation and condition; what goes out is its expansion, and how sure that is.
 */
package org.tenthwise.checklists.materials;
