package org.linedrop.study.kit;

import org.linedrop.circuit.Position;

/** A direction in the vehicle: x ahead, y left, z up, which is right-handed. */
record Arrow(double x, double y, double z) {

    static Arrow between(Position from, Position to) {
        Arrow arrow = new Arrow(to.aheadM() - from.aheadM(), to.leftM() - from.leftM(), to.heightM() - from.heightM());
        return arrow.times(1 / Math.sqrt(arrow.dot(arrow)));
    }

    double dot(Arrow other) {
        return x * other.x + y * other.y + z * other.z;
    }

    Arrow cross(Arrow other) {
        return new Arrow(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    Arrow times(double factor) {
        return new Arrow(x * factor, y * factor, z * factor);
    }

    Arrow plus(Arrow other) {
        return new Arrow(x + other.x, y + other.y, z + other.z);
    }

    /** What of it is square to an axis of length one. */
    Arrow across(Arrow axis) {
        return plus(axis.times(-dot(axis)));
    }

    double angleRad(Arrow other) {
        Arrow cross = cross(other);
        return Math.atan2(Math.sqrt(cross.dot(cross)), dot(other));
    }

    /** Turned as an axis turns into the next by the shortest way: a hose that bends and does not twist. */
    Arrow carried(Arrow axis, Arrow next) {
        Arrow turn = axis.cross(next);
        Arrow moved = turn.cross(this);
        return plus(moved).plus(turn.cross(moved).times(1 / (1 + axis.dot(next))));
    }
}
