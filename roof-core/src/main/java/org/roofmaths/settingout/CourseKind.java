package org.roofmaths.settingout;

/**
 * Which of three kinds a course is.
 *
 * @since 0.1
 */
public enum CourseKind {
    /** The short course of a double-lap roof under the first full one. */
    UNDER_EAVES("under-eaves course"),
    /** A course of full units. */
    FULL("course"),
    /** The short course of a double-lap roof under the ridge. */
    TOPS("tops course");

    private final String words;

    CourseKind(String words) {
        this.words = words;
    }

    /** Returns the kind in words, such as {@code under-eaves course}. */
    @Override
    public String toString() {
        return words;
    }
}
