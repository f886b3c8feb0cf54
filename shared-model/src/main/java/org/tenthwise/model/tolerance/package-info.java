/** The limits a drawing sets. A size exactly on a limit is inside: the limits belong to the part that meets them. */
package org.tenthwise.model.tolerance;
