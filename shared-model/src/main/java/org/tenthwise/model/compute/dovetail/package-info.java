/** Dovetails measured by pins in their corners. */
package org.tenthwise.model.compute.dovetail;
