package org.roofmaths.units;

/** Sines, cosines and tangents of angles in degrees, exact at the angles whose value is a short number. */
final class Degrees {
    private Degrees() {}

    static double sin(double degrees) {
        double turned = Math.IEEEremainder(degrees, 360);
        // Both differences are exact, and keep the argument of the series small.
        double acute = Math.abs(turned) > 90 ? 180 - Math.abs(turned) : Math.abs(turned);
        return Math.signum(turned) * sinOfAcute(acute) + 0.0;
    }

    static double cos(double degrees) {
        double turned = Math.abs(Math.IEEEremainder(degrees, 360));
        return turned > 90 ? -cosOfAcute(180 - turned) : cosOfAcute(turned);
    }

    static double tan(double degrees) {
        double turned = Math.IEEEremainder(degrees, 180);
        return Math.signum(turned) * tanOfAcute(Math.abs(turned)) + 0.0;
    }

    /** Returns the angle from above -90 to below 90 degrees whose tangent is given. */
    static double atan(double tangent) {
        return StrictMath.toDegrees(StrictMath.atan(tangent));
    }

    private static double sinOfAcute(double degrees) {
        if (degrees == 30) {
            return 0.5;
        }
        return degrees <= 45
                ? StrictMath.sin(StrictMath.toRadians(degrees))
                : StrictMath.cos(StrictMath.toRadians(90 - degrees));
    }

    private static double cosOfAcute(double degrees) {
        if (degrees == 60) {
            return 0.5;
        }
        return degrees <= 45
                ? StrictMath.cos(StrictMath.toRadians(degrees))
                : StrictMath.sin(StrictMath.toRadians(90 - degrees));
    }

    private static double tanOfAcute(double degrees) {
        if (degrees == 45) {
            return 1;
        }
        return degrees < 45
                ? StrictMath.tan(StrictMath.toRadians(degrees))
                : 1 / StrictMath.tan(StrictMath.toRadians(90 - degrees));
    }
}
