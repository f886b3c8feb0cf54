/**
 * Where holes lie and how far off: position, bolt circles, centre distances, work held off centre. One class a sum;
 * each reads what is given, asks the model and writes the answer down.
 */
package org.tenthwise.app.sums.position;
