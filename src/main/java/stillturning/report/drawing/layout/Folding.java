package stillturning.report.drawing.layout;

import java.util.List;
import org.eclipse.elk.alg.layered.options.CuttingStrategy;
import org.eclipse.elk.alg.layered.options.LayerConstraint;
import org.eclipse.elk.alg.layered.options.LayeredOptions;
import org.eclipse.elk.alg.layered.options.WrappingStrategy;
import org.eclipse.elk.core.options.PortConstraints;
import org.eclipse.elk.graph.ElkEdge;
import org.eclipse.elk.graph.ElkNode;
import org.eclipse.elk.graph.util.ElkGraphUtil;

/** Asks the layout engine to put layers in several rows, one below the other. */
@FunctionalInterface
interface Folding {

    /** Weight of a line that ends on a bar or a load, others weighing 1. */
    int HEAVY = 10;

    /** All layers in one row. */
    Folding NONE = graph -> {};

    void describe(ElkNode graph);

    /** As many rows as make it largest on a paper, given its width over its height. */
    static Folding forPaper(double shape) {
        return graph -> {
            weigh(graph);
            graph.setProperty(LayeredOptions.WRAPPING_STRATEGY, WrappingStrategy.MULTI_EDGE);
            graph.setProperty(LayeredOptions.ASPECT_RATIO, shape);
        };
    }

    /** A new row before each of these layers. */
    static Folding before(List<Integer> layers) {
        return graph -> {
            weigh(graph);
            if (!layers.isEmpty()) {
                graph.setProperty(LayeredOptions.WRAPPING_STRATEGY, WrappingStrategy.MULTI_EDGE);
                graph.setProperty(LayeredOptions.WRAPPING_CUTTING_STRATEGY, CuttingStrategy.MANUAL);
                graph.setProperty(LayeredOptions.WRAPPING_CUTTING_CUTS, layers);
                graph.setProperty(LayeredOptions.WRAPPING_MULTI_EDGE_IMPROVE_CUTS, false);
            }
        };
    }

    /**
     * A short chain beside a long one could lie in any of several layers alike, and would change
     * between them when something else is edited: unlike weights leave fewer ties.
     */
    private static void weigh(ElkNode graph) {
        for (ElkEdge edge : graph.getContainedEdges()) {
            ElkNode to = ElkGraphUtil.connectableShapeToNode(edge.getTargets().get(0));
            boolean bar =
                    to.getProperty(LayeredOptions.PORT_CONSTRAINTS) == PortConstraints.FIXED_SIDE;
            boolean last =
                    to.getProperty(LayeredOptions.LAYERING_LAYER_CONSTRAINT)
                            == LayerConstraint.LAST;
            edge.setProperty(LayeredOptions.PRIORITY_SHORTNESS, bar || last ? HEAVY : 1);
        }
    }
}
