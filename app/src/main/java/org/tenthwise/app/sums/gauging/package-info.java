/** Plain plugs and rings. One class a sum; each reads what is given, asks the model and writes the answer down. */
package org.tenthwise.app.sums.gauging;
