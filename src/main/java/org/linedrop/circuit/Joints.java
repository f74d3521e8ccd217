package org.linedrop.circuit;

/** What becomes of neighbours that do not go together. */
enum Joints {
    /** Problems: a file must not be wrong about the car as it stands. */
    REFUSED,
    /** Assumptions: a case asks what would be. */
    NOTED,
    /** Not looked at: a study changes one size and leaves its neighbours. */
    LEFT
}
