/** What is left to cut and what to type into the offset register. One class a formula; pure. */
package org.tenthwise.model.compute.cutting;
