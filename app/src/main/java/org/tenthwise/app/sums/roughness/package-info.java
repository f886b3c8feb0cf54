/** Roughness of surfaces: what the instrument is set to, and whether its values are accepted. */
package org.tenthwise.app.sums.roughness;
