/**
 * What a roughness instrument is set to for a limit of the drawing, and whether its values are accepted by it. One
 * class a formula; pure.
 */
package org.tenthwise.model.compute.roughness;
