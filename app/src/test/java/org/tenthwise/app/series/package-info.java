/** Tests of series over parts. */
package org.tenthwise.app.series;
