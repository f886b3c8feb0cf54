/** What several readings of one wall say about its form: taper, bell-mouth, out of round. One class a formula; pure. */
package org.tenthwise.model.compute.form;
