package org.tenthwise.model.compute.roundness;

/** Why readings at some angles cannot tell where the centre of the work lies. */
public enum UnfitAngles {

    /** Fewer than three different directions: any of many circles goes through them. */
    FEWER_THAN_THREE_ANGLES,

    /** Half a turn or more without a reading: a small error on one side throws the centre far off. */
    GAP_OF_HALF_A_TURN
}
