package org.roofmaths.roof.internal;

import java.math.BigInteger;

/**
 * The point where three planes meet, in nanometres, with a bound on its error; once asked for, also as exact
 * quotients with one positive denominator. {@link Planes} makes and reads it.
 */
final class Meeting {
    final int i;
    final int j;
    final int k;
    double x;
    double y;
    double z;
    double errXY;
    double errZ;
    BigInteger dx;
    BigInteger dy;
    BigInteger dz;
    BigInteger d;
    BigInteger timeTop;
    BigInteger timeBottom;

    Meeting(int i, int j, int k) {
        this.i = i;
        this.j = j;
        this.k = k;
    }

    /** Whether this is the meeting of the same planes, which are always in ascending order. */
    boolean isOf(Meeting o) {
        return this == o || i == o.i && j == o.j && k == o.k && i >= 0;
    }
}
