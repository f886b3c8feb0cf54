/** Flats and corners. */
package org.tenthwise.model.compute.polygon;
