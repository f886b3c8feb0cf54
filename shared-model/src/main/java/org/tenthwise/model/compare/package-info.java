/** Two plans of a part compared by what they mean, characteristic by characteristic. */
package org.tenthwise.model.compare;
