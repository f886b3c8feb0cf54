/** Involute teeth measured over pins, over several teeth and by chord. */
package org.tenthwise.model.compute.gear;
