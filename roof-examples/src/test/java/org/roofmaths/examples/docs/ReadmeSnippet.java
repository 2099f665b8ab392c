package org.roofmaths.examples.docs;

import static org.roofmaths.units.Quantities.level;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.pitch;

import org.roofmaths.framing.CommonRafter;
import org.roofmaths.roof.Ends;
import org.roofmaths.roof.Roof;
import org.roofmaths.roof.Roofs;
import org.roofmaths.roof.Slope;
import org.roofmaths.settingout.Courses;
import org.roofmaths.units.Range;

/** The Java snippet of the README, compiled. */
final class ReadmeSnippet {
    private ReadmeSnippet() {}

    static void run() {
        // snippet
        Roof roof = Roofs.leanTo()
                .wallLength(metres(5.2))
                .projection(metres(3))
                .slope(Slope.heights(metres(2.3), metres(4.175)))
                .eavesOverhang(level(mm(150)))
                .build();
        Courses courses = Courses.divide(Ends.of(mm(3912), mm(3897)), Range.closed(mm(320), mm(345)));
        CommonRafter rafter = CommonRafter.of(metres(3), pitch("35°"));
        System.out.println(roof + "\n" + courses);
        System.out.print(rafter.working().at(CommonRafter.LENGTH).working().toText());
        // end
    }
}
