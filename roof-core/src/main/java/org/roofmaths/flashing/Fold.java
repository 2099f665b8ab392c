package org.roofmaths.flashing;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.roof.FacePoint;

/**
 * A line along which a sheet is folded, on its template.
 *
 * @param name between which legs, such as {@code cover to upstand}
 * @param from one end
 * @param to the other end
 * @since 0.1
 */
public record Fold(String name, FacePoint from, FacePoint to) implements Serializable {
    private static final long serialVersionUID = 1L;

    /** Keeps the parts. */
    public Fold {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
    }
}
