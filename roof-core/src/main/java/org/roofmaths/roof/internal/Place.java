package org.roofmaths.roof.internal;

import java.util.ArrayList;
import java.util.List;

/** A point where the rising eaves line touches itself at one height: the corners that came there, the fronts it cuts. */
final class Place {
    final Meeting at;
    final List<Corner> corners = new ArrayList<>(2);
    final List<Front> cuts = new ArrayList<>(2);
    final List<Front> ins = new ArrayList<>(2);
    final List<Front> outs = new ArrayList<>(2);
    int node = -1;

    Place(Meeting at) {
        this.at = at;
    }
}
