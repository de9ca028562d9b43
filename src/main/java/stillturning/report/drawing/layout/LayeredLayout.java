package stillturning.report.drawing.layout;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.elk.alg.layered.options.CenterEdgeLabelPlacementStrategy;
import org.eclipse.elk.alg.layered.options.EdgeLabelSideSelection;
import org.eclipse.elk.alg.layered.options.LayerConstraint;
import org.eclipse.elk.alg.layered.options.LayeredOptions;
import org.eclipse.elk.alg.layered.options.NodeFlexibility;
import org.eclipse.elk.alg.layered.options.NodePlacementStrategy;
import org.eclipse.elk.alg.layered.options.OrderingStrategy;
import org.eclipse.elk.core.RecursiveGraphLayoutEngine;
import org.eclipse.elk.core.math.ElkMargin;
import org.eclipse.elk.core.math.ElkPadding;
import org.eclipse.elk.core.math.KVector;
import org.eclipse.elk.core.math.KVectorChain;
import org.eclipse.elk.core.options.Alignment;
import org.eclipse.elk.core.options.CoreOptions;
import org.eclipse.elk.core.options.Direction;
import org.eclipse.elk.core.options.EdgeLabelPlacement;
import org.eclipse.elk.core.options.EdgeRouting;
import org.eclipse.elk.core.options.HierarchyHandling;
import org.eclipse.elk.core.options.PortAlignment;
import org.eclipse.elk.core.options.PortConstraints;
import org.eclipse.elk.core.options.PortSide;
import org.eclipse.elk.core.options.SizeConstraint;
import org.eclipse.elk.core.util.BasicProgressMonitor;
import org.eclipse.elk.core.util.ElkUtil;
import org.eclipse.elk.core.util.IndividualSpacings;
import org.eclipse.elk.graph.ElkEdge;
import org.eclipse.elk.graph.ElkEdgeSection;
import org.eclipse.elk.graph.ElkLabel;
import org.eclipse.elk.graph.ElkNode;
import org.eclipse.elk.graph.ElkPort;
import org.eclipse.elk.graph.util.ElkGraphUtil;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.Mark;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.TextFitting;
import stillturning.report.drawing.diagram.Diagram;
import stillturning.report.drawing.diagram.DiagramLine;
import stillturning.report.drawing.diagram.DiagramSymbol;
import stillturning.report.drawing.diagram.Glyph;
import stillturning.report.drawing.diagram.Port;
import stillturning.report.drawing.diagram.Side;

/** Lays a diagram out in layers from sources to loads, lines at right angles. */
final class LayeredLayout {
    private static final double LABEL_HEIGHT = 12;
    private static final double FRAME_TITLE = 16;
    private static final double WIDEST_LABEL = 150;
    private static final int PATIENT_LINES = 120;

    private final LayoutInput inventory;
    private final ElkNode graph = ElkGraphUtil.createGraph();
    private final Map<String, ElkNode> groups = new LinkedHashMap<>();
    private final Map<String, ElkNode> nodes = new LinkedHashMap<>();
    private final Map<String, SizedSymbol> sized = new LinkedHashMap<>();
    private final Map<String, ElkPort> ports = new HashMap<>();
    private final Map<Integer, ElkEdge> edges = new LinkedHashMap<>();

    private LayeredLayout(LayoutInput inventory) {
        this.inventory = inventory;
    }

    static PlacedDiagram of(Diagram diagram) {
        return of(diagram, Map.of(), Map.of(), Folding.NONE);
    }

    /**
     * A layout in which what is known keeps its order from top to bottom within a layer.
     *
     * @param known where symbols lay before, by id
     * @param wanted where the middle of a symbol is wanted that nothing is joined to, by id
     */
    static PlacedDiagram of(
            Diagram diagram, Map<String, Box> known, Map<String, Point> wanted, Folding folding) {
        PlacedDiagram placed = once(diagram, known, wanted, folding);
        if (!known.isEmpty() || placed.routes().size() > PATIENT_LINES) {
            return placed;
        }
        Map<String, Integer> order = new HashMap<>();
        diagram.symbols().forEach(symbol -> order.put(symbol.id(), order.size()));
        return FreeRows.inOrder(placed, order)
                .map(rows -> once(diagram, rows, wanted, folding))
                .filter(sorted -> FreeRows.crossings(sorted) <= FreeRows.crossings(placed))
                .orElse(placed);
    }

    /** The same without putting rows in order. */
    static PlacedDiagram once(
            Diagram diagram, Map<String, Box> known, Map<String, Point> wanted, Folding folding) {
        try {
            return laidOut(diagram, known, wanted, folding);
        } catch (NullPointerException beside) {
            // the engine has no spacing between a fold and a line that goes up or down beside it
            return laidOut(diagram, known, wanted, Folding.NONE);
        }
    }

    private static PlacedDiagram laidOut(
            Diagram diagram, Map<String, Box> known, Map<String, Point> wanted, Folding folding) {
        LayeredLayout layout = new LayeredLayout(LayoutInput.of(diagram));
        layout.describeGraph();
        layout.describeEffort(layout.inventory.routed().size());
        List<LooseSymbols.Wanted> loose = new ArrayList<>();
        for (SizedSymbol room : layout.inventory.sized()) {
            Point middle = wanted.get(room.symbol().id());
            if (middle != null && layout.inventory.isLoose(room.symbol())) {
                loose.add(new LooseSymbols.Wanted(room, middle));
            } else {
                layout.addNode(room);
            }
        }
        layout.inventory.routed().forEach(layout::addEdge);
        folding.describe(layout.graph);
        layout.keepOrder(known);
        new RecursiveGraphLayoutEngine().layout(layout.graph, new BasicProgressMonitor());
        return LooseSymbols.placed(LineLabels.cleared(BarEnds.slid(layout.placed())), loose);
    }

    /** The number of the layer that each symbol would come to lie in, from the left. */
    static Map<String, Integer> layers(Diagram diagram) {
        LayeredLayout layout = new LayeredLayout(LayoutInput.of(diagram));
        layout.describeGraph();
        layout.graph.setProperty(LayeredOptions.THOROUGHNESS, 1);
        layout.graph.setProperty(
                LayeredOptions.NODE_PLACEMENT_STRATEGY, NodePlacementStrategy.SIMPLE);
        layout.graph.setProperty(LayeredOptions.GENERATE_POSITION_AND_LAYER_IDS, true);
        layout.inventory.sized().forEach(layout::addNode);
        layout.inventory.routed().forEach(layout::addEdge);
        Folding.before(List.of()).describe(layout.graph);
        List.copyOf(layout.edges.values()).forEach(layout::putNodeForLabel);
        new RecursiveGraphLayoutEngine().layout(layout.graph, new BasicProgressMonitor());
        Map<String, Integer> layers = new LinkedHashMap<>();
        layout.nodes.forEach(
                (id, node) -> layers.put(id, node.getProperty(LayeredOptions.LAYERING_LAYER_ID)));
        return layers;
    }

    /** Layers of nothing but labels are counted where the engine folds, and not in its numbers. */
    private void putNodeForLabel(ElkEdge edge) {
        if (!edge.getLabels().isEmpty()) {
            edge.getLabels().clear();
            ElkNode between = ElkGraphUtil.createNode(graph);
            ElkGraphUtil.createSimpleEdge(between, edge.getTargets().get(0));
            edge.getTargets().set(0, between);
        }
    }

    private void describeGraph() {
        graph.setProperty(CoreOptions.ALGORITHM, LayeredOptions.ALGORITHM_ID);
        graph.setProperty(LayeredOptions.DIRECTION, Direction.RIGHT);
        graph.setProperty(LayeredOptions.EDGE_ROUTING, EdgeRouting.ORTHOGONAL);
        graph.setProperty(LayeredOptions.RANDOM_SEED, 1);
        graph.setProperty(LayeredOptions.HIERARCHY_HANDLING, HierarchyHandling.INCLUDE_CHILDREN);
        graph.setProperty(
                LayeredOptions.CONSIDER_MODEL_ORDER_STRATEGY, OrderingStrategy.PREFER_EDGES);
        graph.setProperty(
                LayeredOptions.EDGE_LABELS_SIDE_SELECTION, EdgeLabelSideSelection.ALWAYS_UP);
        graph.setProperty(
                LayeredOptions.EDGE_LABELS_CENTER_LABEL_PLACEMENT_STRATEGY,
                CenterEdgeLabelPlacementStrategy.HEAD_LAYER);
        graph.setProperty(LayeredOptions.PADDING, new ElkPadding(0));
        graph.setProperty(LayeredOptions.ASPECT_RATIO, 1.3);
        spacing(graph);
    }

    private void keepOrder(Map<String, Box> known) {
        if (!known.isEmpty()) {
            graph.setProperty(LayeredOptions.CROSSING_MINIMIZATION_SEMI_INTERACTIVE, true);
        }
        nodes.forEach(
                (id, node) -> {
                    Box before = known.get(id);
                    if (before != null) {
                        node.setProperty(
                                LayeredOptions.POSITION, new KVector(before.x(), before.y()));
                    }
                });
    }

    /** The placement that stretches bars is worth waiting for, but its time grows steeply. */
    private void describeEffort(int lines) {
        boolean patient = lines <= PATIENT_LINES;
        graph.setProperty(LayeredOptions.THOROUGHNESS, patient ? 20 : 7);
        graph.setProperty(
                LayeredOptions.NODE_PLACEMENT_STRATEGY,
                patient
                        ? NodePlacementStrategy.NETWORK_SIMPLEX
                        : NodePlacementStrategy.BRANDES_KOEPF);
    }

    private static void spacing(ElkNode parent) {
        parent.setProperty(LayeredOptions.SPACING_NODE_NODE, 5.0);
        parent.setProperty(LayeredOptions.SPACING_EDGE_NODE, 7.0);
        parent.setProperty(LayeredOptions.SPACING_EDGE_EDGE, 7.0);
        parent.setProperty(LayeredOptions.SPACING_EDGE_LABEL, 2.0);
        parent.setProperty(LayeredOptions.SPACING_NODE_NODE_BETWEEN_LAYERS, 10.0);
        parent.setProperty(LayeredOptions.SPACING_EDGE_NODE_BETWEEN_LAYERS, 8.0);
        parent.setProperty(LayeredOptions.SPACING_EDGE_EDGE_BETWEEN_LAYERS, 7.0);
        parent.setProperty(LayeredOptions.SPACING_COMPONENT_COMPONENT, 20.0);
    }

    private void addNode(SizedSymbol room) {
        DiagramSymbol symbol = room.symbol();
        ElkNode parent = symbol.group().map(this::groupNode).orElse(graph);
        ElkNode node = ElkGraphUtil.createNode(parent);
        node.setDimensions(room.width(), room.height());
        nodes.put(symbol.id(), node);
        sized.put(symbol.id(), room);
        if (room.bar()) {
            describeBar(node, room);
        } else {
            node.setProperty(LayeredOptions.PORT_CONSTRAINTS, PortConstraints.FIXED_POS);
        }
        boolean endOfRow =
                symbol.group().isEmpty()
                        && !inventory.feedsSomething(symbol)
                        && (inventory.fedBySomething(symbol) || symbol.glyph() == Glyph.LOAD);
        if (endOfRow) {
            node.setProperty(LayeredOptions.LAYERING_LAYER_CONSTRAINT, LayerConstraint.LAST);
            node.setProperty(LayeredOptions.ALIGNMENT, Alignment.LEFT);
        }
    }

    private static void describeBar(ElkNode node, SizedSymbol room) {
        SymbolShape shape = room.shape();
        IndividualSpacings spacings = new IndividualSpacings();
        spacings.setProperty(LayeredOptions.SPACING_PORT_PORT, SymbolShape.ROW);
        spacings.setProperty(
                LayeredOptions.SPACING_PORTS_SURROUNDING,
                new ElkMargin(
                        shape.axis().y() + BarShape.OVERHANG,
                        0,
                        BarShape.OVERHANG + BarShape.bottom(room.symbol()),
                        0));
        node.setProperty(LayeredOptions.SPACING_INDIVIDUAL, spacings);
        node.setProperty(LayeredOptions.PORT_ALIGNMENT_DEFAULT, PortAlignment.BEGIN);
        node.setProperty(LayeredOptions.PORT_CONSTRAINTS, PortConstraints.FIXED_SIDE);
        node.setProperty(
                LayeredOptions.NODE_SIZE_CONSTRAINTS,
                EnumSet.of(SizeConstraint.PORTS, SizeConstraint.MINIMUM_SIZE));
        node.setProperty(
                LayeredOptions.NODE_SIZE_MINIMUM, new KVector(shape.width(), shape.height()));
        node.setProperty(
                LayeredOptions.NODE_PLACEMENT_NETWORK_SIMPLEX_NODE_FLEXIBILITY,
                NodeFlexibility.NODE_SIZE);
    }

    private ElkNode groupNode(String name) {
        return groups.computeIfAbsent(
                name,
                key -> {
                    ElkNode group = ElkGraphUtil.createNode(graph);
                    group.setProperty(
                            LayeredOptions.PADDING, new ElkPadding(FRAME_TITLE + 4, 8, 8, 8));
                    group.setProperty(
                            LayeredOptions.NODE_SIZE_CONSTRAINTS,
                            EnumSet.of(SizeConstraint.MINIMUM_SIZE));
                    group.setProperty(
                            LayeredOptions.NODE_SIZE_MINIMUM,
                            new KVector(SymbolShape.widthOf(name, true) + 16, 0));
                    spacing(group);
                    return group;
                });
    }

    private void addEdge(int number) {
        DiagramLine line = inventory.line(number);
        ElkPort from = portOf(line.fromSymbol(), line.fromPort(), number);
        ElkPort to = portOf(line.toSymbol(), line.toPort(), number);
        ElkEdge edge = ElkGraphUtil.createSimpleEdge(from, to);
        edges.put(number, edge);
        boolean onBar = of(sized, line.fromSymbol()).bar() || of(sized, line.toSymbol()).bar();
        // a bar does not mind where a line leaves it, so a bend had better be there
        edge.setProperty(LayeredOptions.PRIORITY_STRAIGHTNESS, onBar ? 1 : 8);
        String words = TextFitting.fitted(line.label(), SymbolShape.TEXT, false, WIDEST_LABEL);
        if (!words.isBlank()) {
            ElkLabel label = ElkGraphUtil.createLabel(words, edge);
            label.setDimensions(SymbolShape.widthOf(words, false) + 4, LABEL_HEIGHT);
            label.setProperty(LayeredOptions.EDGE_LABELS_PLACEMENT, EdgeLabelPlacement.CENTER);
        }
    }

    private ElkPort portOf(String symbol, String port, int line) {
        SizedSymbol room = of(sized, symbol);
        // on a bar each line has a place of its own
        String key = symbol + '\n' + port + (room.bar() ? "\n" + line : "");
        return ports.computeIfAbsent(key, unused -> newPort(room, port));
    }

    private ElkPort newPort(SizedSymbol room, String name) {
        Port port = LayoutInput.port(room.symbol(), name);
        ElkPort made = ElkGraphUtil.createPort(of(nodes, room.symbol().id()));
        made.setDimensions(0, 0);
        made.setProperty(LayeredOptions.PORT_SIDE, PortSide.valueOf(port.side().name()));
        if (!room.bar()) {
            Point at = of(room.shape().ports(), name).movedBy(room.left(), room.top());
            double x =
                    port.side() == Side.EAST ? room.width() : port.side() == Side.WEST ? 0 : at.x();
            double y =
                    port.side() == Side.SOUTH
                            ? room.height()
                            : port.side() == Side.NORTH ? 0 : at.y();
            made.setLocation(x, y);
        }
        return made;
    }

    private PlacedDiagram placed() {
        List<PlacedDiagram.PlacedSymbol> symbols = new ArrayList<>();
        nodes.forEach((id, node) -> symbols.add(placed(of(sized, id), node)));
        List<PlacedDiagram.PlacedLine> routes = new ArrayList<>();
        edges.forEach((number, edge) -> routes.add(route(number, edge)));
        List<PlacedDiagram.GroupFrame> frames = new ArrayList<>();
        groups.forEach((name, node) -> frames.add(new PlacedDiagram.GroupFrame(name, box(node))));
        return new PlacedDiagram(
                List.copyOf(symbols),
                List.copyOf(routes),
                List.copyOf(frames),
                graph.getWidth(),
                graph.getHeight());
    }

    private static PlacedDiagram.PlacedSymbol placed(SizedSymbol room, ElkNode node) {
        Box box = box(node);
        List<PlacedDiagram.LineEnd> ends =
                node.getPorts().stream()
                        .map(
                                port ->
                                        new PlacedDiagram.LineEnd(
                                                new Point(
                                                        box.x() + port.getX(),
                                                        box.y() + port.getY()),
                                                Side.valueOf(
                                                        port.getProperty(LayeredOptions.PORT_SIDE)
                                                                .name())))
                        .toList();
        return new PlacedDiagram.PlacedSymbol(room, box, ends);
    }

    private static Box box(ElkNode node) {
        KVector at = ElkUtil.absolutePosition(node);
        return new Box(at.x, at.y, node.getWidth(), node.getHeight());
    }

    private PlacedDiagram.PlacedLine route(int number, ElkEdge edge) {
        KVector origin = ElkUtil.absolutePosition(edge.getContainingNode());
        List<Point> points = new ArrayList<>();
        for (ElkEdgeSection section : edge.getSections()) {
            points.add(new Point(section.getStartX() + origin.x, section.getStartY() + origin.y));
            section.getBendPoints()
                    .forEach(p -> points.add(new Point(p.getX() + origin.x, p.getY() + origin.y)));
            points.add(new Point(section.getEndX() + origin.x, section.getEndY() + origin.y));
        }
        List<Point> joints = new ArrayList<>();
        KVectorChain met = edge.getProperty(LayeredOptions.JUNCTION_POINTS);
        if (met != null) {
            met.forEach(p -> joints.add(new Point(p.x + origin.x, p.y + origin.y)));
        }
        List<SymbolShape.Caption> labels =
                edge.getLabels().stream()
                        .map(
                                label ->
                                        new SymbolShape.Caption(
                                                label.getText(),
                                                label.getX() + label.getWidth() / 2 + origin.x,
                                                label.getY() + 9.5 + origin.y,
                                                Mark.Anchor.MIDDLE,
                                                false))
                        .toList();
        return new PlacedDiagram.PlacedLine(
                number, inventory.line(number), List.copyOf(points), List.copyOf(joints), labels);
    }

    private static <V> V of(Map<String, V> map, String key) {
        V value = map.get(key);
        if (value == null) {
            throw new IllegalStateException("nothing was laid out for " + key);
        }
        return value;
    }
}
