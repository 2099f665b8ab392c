package org.roofmaths.sheet;

import java.io.Serializable;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.immutables.value.Value;
import org.roofmaths.covering.CoveringUnit;
import org.roofmaths.internal.style.StagedStyle;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.rules.Exposure;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;

/**
 * A whole job as a person states it: the roof, its covering, the walls it meets, the documents it is held against and how it is bought.
 *
 * <p>A job is read from plain maps and lists with {@link #attemptFromTree(Map)}, which reports every problem of a form at once, each
 * under the JSON Pointer of its field, and written back with {@link #toTree()}. {@link SiteSheet#of(Job)} works it out.
 *
 * @since 0.1
 */
@Value.Immutable
@StagedStyle
public interface Job extends Serializable {
    /** A field that a job must have is not there. */
    ProblemCode FIELD_MISSING = ProblemCode.of("job.field-missing", "Add the field, with its unit.");
    /** A field cannot be read as what it must be. */
    ProblemCode FIELD_UNREADABLE =
            ProblemCode.of("job.field-unreadable", "Write the value as the message says, with its unit.");
    /** A field is not one of those that a job has at this place. */
    ProblemCode FIELD_UNKNOWN = ProblemCode.of("job.field-unknown", "Remove the field, or correct its name.");
    /** A part of the job has an impossible size. */
    ProblemCode IMPOSSIBLE = ProblemCode.of("job.impossible", "Check the size against the drawing.");

    /** Returns the name of the job. */
    String name();

    /** Returns the jurisdiction whose documents are asked, such as {@code gb}. */
    String jurisdiction();

    /** Returns the editions asked, each as {@code document/edition}; where several have a figure, the first one's is used and all are shown. */
    List<String> editions();

    /** Returns how hard rain drives at the site. */
    Exposure exposure();

    /** Returns the roof. */
    JobRoof roof();

    /** Returns the tile or slate. */
    CoveringUnit covering();

    /** Returns what is decided about battens and columns. */
    JobSettingOut settingOut();

    /** Returns the underlay. */
    JobUnderlay underlay();

    /** Returns how the job is bought. */
    JobOrder order();

    /** Returns a remark about the job; empty if there is none. */
    @Value.Default
    default String note() {
        return "";
    }

    /** Returns the headlap that the owner asks for; empty if the rule's or the unit's least headlap serves. */
    Optional<Length> headlap();

    /** Returns the walls that the roof meets; empty if it meets none. */
    Optional<JobWalls> walls();

    /** Returns the length that one ridge unit covers; empty if there is no ridge or nothing is to be ordered for it. */
    Optional<Length> ridgeCover();

    /** Returns the free area of one spot vent for the top edge; empty for a continuous opening. */
    Optional<Area> topVent();

    /** Starts a job; the builder asks for its parts in the order in which a person would state them. */
    static JobBuilderStages.BuildStart builder() {
        return JobBuilderStages.start();
    }

    /**
     * Reads a job from plain maps, lists, texts and numbers, such as a JSON reader gives.
     *
     * @param tree the form
     * @return the job, or every problem of the form, each with the JSON Pointer of its field as the place
     */
    static Attempt<Job> attemptFromTree(Map<String, ?> tree) {
        return JobForm.read(tree);
    }

    /**
     * Returns the job as plain maps, lists, texts and numbers; {@link #attemptFromTree(Map)} reads them back to an equal job.
     *
     * @return the form, in the order in which a person would fill it in
     */
    default Map<String, Object> toTree() {
        return JobForm.write(this);
    }
}
