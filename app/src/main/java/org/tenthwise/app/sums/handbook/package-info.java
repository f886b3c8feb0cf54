/** The sums of every kind, put together. */
package org.tenthwise.app.sums.handbook;
