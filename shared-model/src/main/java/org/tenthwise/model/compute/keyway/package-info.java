/** How deep a keyway is, by every way a drawing gives it. */
package org.tenthwise.model.compute.keyway;
