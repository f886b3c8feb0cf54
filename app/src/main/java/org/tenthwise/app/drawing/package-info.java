/** The pages of a drawing, from a PDF or a picture beside the plan, as images of a size that a tablet can hold. */
package org.tenthwise.app.drawing;
