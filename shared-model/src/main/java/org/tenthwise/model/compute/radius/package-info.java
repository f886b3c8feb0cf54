/** Radii from what a hand gauge reads of an arc. */
package org.tenthwise.model.compute.radius;
