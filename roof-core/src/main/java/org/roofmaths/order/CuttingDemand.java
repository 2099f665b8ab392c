package org.roofmaths.order;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import org.immutables.value.Value;
import org.roofmaths.internal.style.StagedStyle;
import org.roofmaths.units.Length;

/**
 * What is to be cut, and from which stock lengths: battens, gutters, undercloak, lead, timber.
 *
 * <pre>{@code
 * CuttingDemand demand = CuttingDemand.builder()
 *         .kerf(mm(3))
 *         .addStockLengths(metres(4.8))
 *         .addPieces(CutPiece.of("trimmer", mm(1200), 8))
 *         .build();
 * }</pre>
 *
 * @since 0.1
 */
@Value.Immutable
@StagedStyle
public interface CuttingDemand extends Serializable {

    /** Returns what the saw takes away with each cut; zero for shears. A cut that ends on the end of the stock takes nothing. */
    Length kerf();

    /** Returns the stock lengths that can be bought, as many of each as needed. */
    List<Length> stockLengths();

    /** Returns the pieces that are cut as they are. */
    List<CutPiece> pieces();

    /** Returns the rows that may be joined on supports. */
    List<JointedRun> runs();

    /** Returns what matters more where rows are joined; fewest joints unless said otherwise. */
    @Value.Default
    default Joining joining() {
        return Joining.FEWEST_JOINTS;
    }

    /** Returns the longest stock that can be carried to the site; empty if there is no limit. */
    Optional<Length> transportLimit();

    /** Starts a demand; the builder asks for the kerf first, then takes stock lengths, pieces and rows. */
    static CuttingDemandBuilderStages.BuildStart builder() {
        return CuttingDemandBuilderStages.start();
    }
}
